#include "report/document/html_nodes.h"

#include <algorithm>

namespace coatday::report::page {
namespace {

void add_answers(Element parent, const Facts& facts) {
  Element list = parent.add("dl", {{"class", "answers"}});
  for (const Facts::Fact& fact : facts.facts) {
    Element answer = list.add("div", {});
    add_phrase(answer.add("dt", {}), fact.label);
    Element value = answer.add("dd", {});
    const Mark mark = mark_of(fact.value);
    Element words = value.add("strong", {});
    if (mark != Mark::plain) words.set("class", class_of(mark));
    add_phrase(words, fact.value, mark);
    if (!fact.more.empty()) add_phrase(value.add("span", {{"class", "small"}}), fact.more);
  }
}

void add_box(Element item, const Phrase& text) {
  Element label = item.add("label", {});
  Element box = label.add("input", {{"type", "checkbox"}});
  if (!text.empty() && !text.begin()->id.empty()) box.set("id", text.begin()->id);
  add_phrase(label.add("span", {}), text);
}

}  // namespace

std::string_view class_of(Mark mark) {
  switch (mark) {
    case Mark::plain:
      return "";
    case Mark::strong:
      return "strong";
    case Mark::faint:
      return "faint";
    case Mark::good:
      return "good";
    case Mark::bad:
      return "bad";
    case Mark::caution:
      return "caution";
  }
  return "";
}

Mark mark_of(const Phrase& phrase) {
  if (phrase.empty()) return Mark::plain;
  const Mark first = phrase.begin()->mark;
  return std::all_of(phrase.begin(), phrase.end(), [first](const Span& span) { return span.mark == first; }) ? first : Mark::plain;
}

void add_phrase(Element parent, const Phrase& phrase, Mark shown) {
  for (const Span& span : phrase) {
    Element at = parent;
    if (!span.link.empty()) at = at.add("a", {{"href", "#" + span.link}});
    if (span.mark != shown && span.mark == Mark::strong) at = at.add("b", {});
    if (span.mark != shown && span.mark != Mark::plain && span.mark != Mark::strong)
      at = at.add("span", {{"class", std::string(class_of(span.mark))}});
    const std::string& words = span.full.empty() ? span.text : span.full;
    if (span.name) {
      at.name(words);
    } else {
      at.text(words);
    }
  }
}

std::string words_of(const Phrase& phrase) {
  std::string words;
  for (const Span& span : phrase) words += span.full.empty() ? span.text : span.full;
  return words;
}

void add_facts(Element parent, const Facts& facts) {
  if (facts.facts.empty()) return;
  if (facts.headline) return add_answers(parent, facts);
  Element list = parent.add("dl", {{"class", "facts"}});
  for (const Facts::Fact& fact : facts.facts) {
    if (!fact.label.empty()) add_phrase(list.add("dt", {}), fact.label);
    Element value = list.add("dd", {});
    if (fact.value.empty()) value.set("class", "blank");
    add_phrase(value, fact.value);
    if (!fact.more.empty()) add_phrase(value.text(", "), fact.more);
  }
}

void add_list(Element parent, const List& list) {
  if (list.items.empty()) return;
  const bool cautions = list.kind == List::Kind::cautions, boxes = list.kind == List::Kind::boxes;
  Element items = parent.add("ul", {{"class", cautions ? "cautions" : boxes ? "boxes" : "points"}});
  for (const Phrase& text : list.items) {
    Element item = items.add("li", {});
    if (boxes) {
      add_box(item, text);
      continue;
    }
    if (!text.empty() && !text.begin()->id.empty()) item.set("id", text.begin()->id);
    add_phrase(item, text);
  }
}

}  // namespace coatday::report::page
