#include "report/document/render_html.h"

#include <algorithm>

#include "report/document/html_nodes.h"
#include "report/document/html_steps.h"
#include "report/document/html_table.h"
#include "report/document/style.h"

namespace coatday::report {
namespace page {
namespace {

bool shown(const Section& section) { return section.media != Media::text; }
bool titled(const Section& section) { return !section.title.empty() && section.title_in != Media::text; }

Element heading(Element parent, int level) {
  return level == 2 ? parent.add("h2", {}) : level == 3 ? parent.add("h3", {}) : parent.add("h4", {});
}

/// The sections one after the other.
class Page {
 public:
  void add(Element parent, const Section& section, int level) {
    if (!shown(section)) return;
    // Without a title or a name of its own it only gathers its blocks.
    const bool gathers = section.id.empty() && section.kind.empty() && !section.cut_off && !titled(section);
    Element place = gathers ? parent : begin(parent, section, level);
    for (const Block& block : section.blocks) add(place, block, section, titled(section) ? level + 1 : level);
  }

 private:
  static Element begin(Element parent, const Section& section, int level) {
    // What has a time of its own can stand by itself.
    Element place = section.lasts ? parent.add("article", {}) : parent.add("section", {});
    if (!section.id.empty()) place.set("id", section.id);
    if (const std::string kind = section.cut_off ? "cut-off" : section.kind; !kind.empty()) place.set("class", kind);
    if (section.lasts) {
      place.set("data-from", std::to_string(section.lasts->from.time_since_epoch().count()));
      place.set("data-until", std::to_string(section.lasts->until.time_since_epoch().count()));
    }
    if (titled(section)) add_phrase(heading(place, level), section.title, mark_of(section.title));
    if (!section.lead.empty()) add_phrase(place.add("p", {{"class", "lead"}}), section.lead);
    return place;
  }

  void add(Element parent, const Block& block, const Section& of, int level) {
    if (const auto* paragraph = std::get_if<Paragraph>(&block)) add_paragraph(parent, *paragraph);
    if (const auto* facts = std::get_if<Facts>(&block)) add_facts(parent, *facts);
    if (const auto* list = std::get_if<List>(&block)) add_list(parent, *list);
    if (const auto* table = std::get_if<Table>(&block)) add_table(parent, *table, words_of(of.title));
    if (const auto* steps = std::get_if<Steps>(&block)) add_steps(parent, *steps, cautions_);
    if (const auto* figure = std::get_if<Figure>(&block)) add_figure(parent, *figure);
    if (const auto* section = std::get_if<Section>(&block)) add(parent, *section, level);
  }

  static void add_paragraph(Element parent, const Paragraph& paragraph) {
    const Mark mark = mark_of(paragraph.text);
    Element words = parent.add("p", {});
    if (!paragraph.head.empty()) {
      add_phrase(words.set("class", "headed"), paragraph.head);
      add_phrase(words.text(" "), paragraph.text);
      return;
    }
    if (mark != Mark::plain) words.set("class", class_of(mark));
    add_phrase(words, paragraph.text, mark);
  }

  static void add_figure(Element parent, const Figure& figure) {
    if (!figure.draw) return;
    figure.draw(figure.id.empty() ? parent : parent.add("div", {{"id", figure.id}}));
  }

  std::set<std::string> cautions_;  // that stand on the page in full
};

std::size_t steps_of(const Section& section) {
  std::size_t count = 0;
  for (const Block& block : section.blocks) {
    if (const auto* steps = std::get_if<Steps>(&block)) count += steps->steps.size();
    if (const auto* inner = std::get_if<Section>(&block)) count += steps_of(*inner);
  }
  return count;
}

void add_head(Element body, const Document& document, const PageFrame& frame) {
  Element head = body.add("header", {});
  head.add("p", {{"class", "shop"}}).name(frame.house);
  add_phrase(head.add("h1", {}), document.title, mark_of(document.title));
  add_phrase(head.add("p", {{"class", "from"}}), document.subtitle);
}

void add_links(Element body, const Document& document) {
  Element links = body.add("nav", {{"aria-label", "On this page"}}).add("ul", {});
  for (const Section& section : document.sections) {
    if (!shown(section) || !titled(section) || section.id.empty()) continue;
    add_phrase(links.add("li", {}).add("a", {{"href", "#" + section.id}}), section.title, mark_of(section.title));
  }
}

std::string body_of(const Document& document, const PageFrame& frame) {
  constexpr std::size_t many = 300;  // steps; a browser takes more than a blink to lay them all out
  Fragment fragment;
  Element body = fragment.root();
  add_head(body, document, frame);
  add_links(body, document);
  Element main = body.add("main", {{"data-plan", frame.key}});
  std::size_t steps = 0;
  for (const Section& section : document.sections) steps += steps_of(section);
  if (steps > many) main.set("class", "large");
  Page page;
  for (const Section& section : document.sections) page.add(main, section, 2);
  body.add("footer", {}).add("p", {}, frame.foot);
  return fragment.html();
}

std::string title_of(const Document& document, const PageFrame& frame) {
  Fragment title;
  title.root().add("title", {}, words_of(document.title) + ", " + frame.house);
  return title.html();
}

}  // namespace
}  // namespace page

std::string render_html(const Document& document, const PageFrame& frame) {
  std::string html =
      "<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n" + std::string(page_mark) +
      "\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<meta name=\"color-scheme\" content=\"light dark\">\n"
      "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; script-src "
      "'unsafe-inline'; img-src data:\">\n<link rel=\"icon\" href=\"data:,\">\n";
  html += page::title_of(document, frame) + "\n<style>\n" + std::string(page::style) + "</style>\n</head>\n<body>\n";
  html += page::body_of(document, frame);
  return html + "\n<script>\n" + std::string(page::script) + "</script>\n</body>\n</html>\n";
}

}  // namespace coatday::report
