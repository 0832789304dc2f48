#include "report/document/html_steps.h"

#include "quantity/text.h"
#include "report/document/html_nodes.h"

namespace coatday::report::page {
namespace {

using Step = Steps::Step;

void add_time(Element item, const Step& step, const Zone& zone) {
  Element time = item.add("p", {{"class", "time"}});
  time.add("time", {}, clock_time(zone.to_local(step.begin)));
  time.add("span", {}, format_hours_minutes(ceil_minutes(step.end - step.begin)));
}

void add_wait(Element list, const Step& wait, const Zone& zone) {
  Element item = list.add("li", {{"class", "wait"}});
  add_time(item, wait, zone);
  add_phrase(item.add("div", {{"class", "what"}}).add("b", {}), wait.title);
  add_phrase(item.add("div", {{"class", "more"}}).add("p", {}), wait.subject);
}

// In full where it first applies, then a link to it.
void add_cautions(Element parent, const std::vector<Phrase>& cautions, std::set<std::string>& shown) {
  if (cautions.empty()) return;
  Element list = parent.add("ul", {{"class", "cautions"}});
  for (const Phrase& caution : cautions) {
    Element item = list.add("li", {});
    for (const Span& span : caution) {
      if (span.link.empty() || (!span.full.empty() && shown.insert(span.link).second)) {
        item.text(span.full.empty() ? span.text : span.full);
      } else {
        item.add("a", {{"href", "#" + span.link}}, span.text);
      }
    }
  }
}

void add_step(Element list, const Step& step, const Zone& zone, std::set<std::string>& shown) {
  Element item = list.add("li", {{"class", step.coat ? "coat" : "work"}});
  add_time(item, step, zone);
  Element what = item.add("div", {{"class", "what"}});
  Element label = what.add("label", {});
  Element box = label.add("input", {{"type", "checkbox"}, {"id", "done/" + step.key}});
  if (step.done) box.set("checked", "checked");
  add_phrase(label.add("b", {}), step.title);
  if (!step.subject.empty()) add_phrase(what.add("p", {}), step.subject);
  for (const Phrase& blank : step.blanks) add_phrase(what.add("p", {{"class", "how"}}), blank);
  if (!step.how.empty()) add_phrase(what.add("p", {{"class", "how"}}), step.how);
  Element more = item.add("div", {{"class", "more"}});
  for (const Phrase& detail : step.details) {
    if (!detail.empty()) add_phrase(more.add("p", {{"class", "fact"}}), detail);
  }
  add_cautions(more, step.cautions, shown);
}

}  // namespace

void add_steps(Element parent, const Steps& steps, std::set<std::string>& shown) {
  Element list = parent.add("ol", {{"class", "steps"}});
  std::optional<Element> night;
  for (const Step& step : steps.steps) {
    if (!step.key.empty()) {
      add_step(list, step, steps.zone, shown);
    } else if (step.end > step.begin) {
      add_wait(list, step, steps.zone);
    } else {
      if (!night) {
        Element after = parent.add("div", {{"class", "night"}});
        add_phrase(after.add("b", {}), step.title);
        night = after.add("ul", {});
      }
      add_phrase(night->add("li", {}), step.subject);
    }
  }
}

}  // namespace coatday::report::page
