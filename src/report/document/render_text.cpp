#include "report/document/render_text.h"

#include <algorithm>

#include "report/document/phrase_text.h"
#include "report/document/steps_lines.h"
#include "report/document/table_lines.h"

namespace coatday::report {
namespace {

/// How far from the left a section's blocks stand.
struct Indent {
  int paragraphs, blocks;
};
constexpr Indent below_title{2, 2};
constexpr Indent without_title{0, 2};
constexpr Indent alone{0, 0};  // there is no title on the whole paper

// Two lines to write on, with room between them.
Lines blank_lines(const Text& head, const TextStyle& style) {
  const Text blank(std::string(static_cast<std::size_t>(std::max(0, style.columns - head.width())), '_'));
  return {head + blank, {}, spaces(head.width()) + blank, {}};
}

// Labels take an even number of columns, so that papers with labels of much the same length look alike.
Lines facts_lines(const Facts& facts, int indent, const TextStyle& style) {
  constexpr int least_width = 10;
  int width = least_width;
  for (const Facts::Fact& fact : facts.facts) width = std::max(width, text_of(fact.label).width() + 2);
  width = std::min(width + width % 2, style.columns / 2);
  Lines lines;
  for (const Facts::Fact& fact : facts.facts) {
    Lines labels = wrap(text_of(fact.label, Mark::faint), std::max(1, width - 2));
    const Text last = labels.back();
    labels.pop_back();
    for (const Text& label : labels) lines.push_back(spaces(indent) + label);
    const Text more = fact.more.empty() ? Text() : ", " + text_of(fact.more);
    append(lines, fact.value.empty() ? blank_lines(spaces(indent) + padded(last, width), style)
                                     : hang(spaces(indent) + padded(last, width), text_of(fact.value) + more, style));
  }
  return lines;
}

Text point(List::Kind kind) {
  switch (kind) {
    case List::Kind::points:
      return "- ";
    case List::Kind::cautions:
      return {"! ", Mark::caution};
    case List::Kind::boxes:
      return "[ ]  ";
  }
  return {};
}

Lines list_lines(const List& list, int indent, const TextStyle& style) {
  Lines lines;
  for (const Phrase& item : list.items) append(lines, hang(spaces(indent) + point(list.kind), text_of(item), style));
  return lines;
}

bool shows_title(const Section& section) { return !section.title.empty() && section.title_in != Media::page; }

// The lead stands beside the title where there is room for it; a title that ends with a colon runs on into it.
Lines heading_lines(const Section& section, const TextStyle& style) {
  constexpr int narrowest_lead = 16;
  const Text title = text_of(section.title, Mark::strong);
  if (section.lead.empty()) return wrap(title, style.columns);
  const bool runs_on = std::prev(section.title.end())->text.ends_with(':');
  if (style.columns - title.width() - 2 >= narrowest_lead) return hang(title + (runs_on ? " " : "  "), text_of(section.lead), style);
  Lines lines = wrap(title, style.columns);
  append(lines, hang(spaces(2), text_of(section.lead), style));
  return lines;
}

Lines section_lines(const Section& section, Indent indent, const TextStyle& style);

Lines block_lines(const Block& block, Indent indent, const TextStyle& style) {
  if (const auto* paragraph = std::get_if<Paragraph>(&block))
    return hang(spaces(indent.paragraphs) + text_of(paragraph->head), text_of(paragraph->text), style);
  if (const auto* facts = std::get_if<Facts>(&block)) return facts_lines(*facts, indent.blocks, style);
  if (const auto* list = std::get_if<List>(&block)) return list_lines(*list, indent.blocks, style);
  if (const auto* table = std::get_if<Table>(&block)) return table_lines(*table, indent.blocks, style);
  if (const auto* steps = std::get_if<Steps>(&block)) return steps_lines(*steps, style);
  if (const auto* section = std::get_if<Section>(&block)) return section_lines(*section, indent, style);
  const Phrase& instead = std::get<Figure>(block).instead;
  return instead.empty() ? Lines{} : hang(spaces(indent.paragraphs), text_of(instead), style);
}

// There is an empty line between sections with titles, but for one of a line within a titled one; and between tables that follow each other.
bool stands_apart(const Block& block, const Block& before, bool titled) {
  if (const auto* section = std::get_if<Section>(&block)) return shows_title(*section) && (!titled || !section->blocks.empty());
  return std::holds_alternative<Table>(block) && std::holds_alternative<Table>(before);
}

Lines section_lines(const Section& section, Indent indent, const TextStyle& style) {
  if (section.media == Media::page) return {};
  const bool titled = shows_title(section);
  Lines lines;
  if (section.cut_off) lines.emplace_back(std::string(static_cast<std::size_t>(style.columns), '-'));
  if (titled) append(lines, heading_lines(section, style));
  const Block* before = nullptr;
  for (const Block& block : section.blocks) {
    const Lines more = block_lines(block, titled ? below_title : indent, style);
    if (more.empty()) continue;
    if (before != nullptr && stands_apart(block, *before, titled)) lines.emplace_back();
    append(lines, more);
    before = &block;
  }
  return lines;
}

Lines title_lines(const Document& document, const TextStyle& style) {
  if (document.title.empty()) return {};
  const Text title = text_of(document.title, Mark::strong), subtitle = text_of(document.subtitle);
  if (subtitle.empty()) return wrap(title, style.columns);
  const int room = style.columns - subtitle.width() - 2;
  if (title.width() <= room) return {padded(title, room + 2) + subtitle};
  Lines lines = wrap(title, style.columns);
  append(lines, hang("  ", subtitle, style));
  return lines;
}

}  // namespace

Lines block_lines(const Block& block, const TextStyle& style) { return block_lines(block, alone, style); }

Lines section_lines(const Section& section, const TextStyle& style) { return section_lines(section, without_title, style); }

std::string render_text(const Document& document, const TextStyle& style) {
  Lines page = title_lines(document, style);
  const bool untitled = page.empty();
  for (const Section& section : document.sections) {
    const bool first = &section == &document.sections.front();
    const Lines lines = section_lines(section, untitled ? alone : first ? below_title : without_title, style);
    if (lines.empty()) continue;
    if (!page.empty() && !(first && !shows_title(section))) page.emplace_back();
    append(page, lines);
  }
  return render(page, style.colour);
}

}  // namespace coatday::report
