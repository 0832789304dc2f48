#include "report/document/render_pages.h"

#include <fmt/core.h>

#include "report/document/phrase_text.h"
#include "report/document/render_text.h"

namespace coatday::report {
namespace {

constexpr std::size_t page_lines = 60;  // of A4 and US Letter at six lines an inch, with margins
constexpr int number_width = 22;

Lines heading(const Document& document, const Section& section, const TextStyle& style) {
  Lines lines = wrap(text_of(document.title), style.columns - number_width);
  append(lines, hang(text_of(section.title) + "  ", text_of(section.lead), style));
  append(lines, {std::string(static_cast<std::size_t>(style.columns), '-'), ""});
  return lines;
}

// Lines that stay together on a page: a step, or another block.
std::vector<Lines> pieces_of(const Section& section, const TextStyle& style) {
  std::vector<Lines> pieces;
  for (const Block& block : section.blocks) {
    const auto* steps = std::get_if<Steps>(&block);
    if (steps == nullptr) pieces.push_back(block_lines(block, style));
    for (std::size_t i = 0; steps != nullptr && i < steps->steps.size(); ++i)
      pieces.push_back(block_lines(Steps{steps->zone, {steps->steps[i]}}, style));
  }
  return pieces;
}

std::vector<Lines> pages_of(const Document& document, const Section& section, const TextStyle& style) {
  const Lines head = heading(document, section, style);
  std::vector<Lines> pages{head};
  for (const Lines& piece : pieces_of(section, style)) {
    const bool full = pages.back().size() + piece.size() > page_lines && pages.back().size() > head.size();
    if (full) pages.push_back(head);
    if (full) pages.back().insert(pages.back().end() - 1, "(goes on from the page before)");
    append(pages.back(), piece);
  }
  return pages;
}

}  // namespace

std::string render_pages(const Document& document, const TextStyle& style) {
  std::vector<Lines> pages;
  for (const Section& section : document.sections) {
    const std::vector<Lines> more = pages_of(document, section, style);
    pages.insert(pages.end(), more.begin(), more.end());
  }
  std::string text;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    const Text number = text_of(document.subtitle) + fmt::format(" {} of {}", i + 1, pages.size());
    Text& title = pages[i].front();
    title = padded(title, style.columns - number_width) + padded(number, number_width, Align::right);
    text += (i == 0 ? "" : "\f") + render(pages[i], false);
  }
  return text;
}

}  // namespace coatday::report
