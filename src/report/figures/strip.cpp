#include "report/figures/strip.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <utility>

#include "report/document/lines.h"

namespace coatday::report::page {
namespace {

constexpr int head = 34;  // the days' names and hours

// A sign of a small text, in pixels, on the wide side.
constexpr double sign_width = 5.5;

}  // namespace

Strip::Strip(Element figure, const Week& week)
    : week_(week),
      figure_(figure),
      svg_(figure.add("svg", {{"class", "week"}, {"width", "100%"}, {"role", "img"}})),
      behind_(svg_.add("g", {})),
      names_(figure.add("ul", {{"class", "names"}})),
      down_(head) {}

Element Strip::row(std::string_view name, std::string_view more, int height) {
  Element label = names_.add("li", {{"style", fmt::format("top:{}px", down_)}});
  label.add("b", {}).name(name);
  if (!more.empty()) label.add("span", {}, " ").name(more);
  Element row = svg_.add("g", {{"transform", fmt::format("translate(0 {})", down_)}});
  down_ += line + height + 6;
  return row;
}

Element Strip::thin_row(std::string_view name) {
  names_.add("li", {{"class", "thin"}, {"style", fmt::format("top:{}px", down_)}}).name(name);
  Element row = svg_.add("g", {{"transform", fmt::format("translate(0 {})", down_)}});
  down_ += line + thin;
  return row;
}

void Strip::heading(std::string_view name) {
  down_ += 6;
  names_.add("li", {{"class", "over"}, {"style", fmt::format("top:{}px", down_)}}).name(name);
  down_ += line + 4;
}

std::optional<Element> Strip::bar_at(Element row, std::string_view kind, Instant from, Instant until, int y, int height) const {
  if (!week_.meets(from, until)) return std::nullopt;
  const double begin = std::max(0.0, week_.share(from)), end = std::min(1.0, week_.share(until));
  Element rect = row.add("rect", {{"class", std::string(kind)}, {"x", percent(begin)}});
  if (y != 0) rect.set("y", number(y));
  return rect.set("width", percent(end - begin)).set("height", number(height));
}

void Strip::word_at(Element row, std::string_view word, Instant at, Instant until) const {
  if (!week_.meets(at, at + std::chrono::seconds(1))) return;
  constexpr double hours = 7 * 24;
  const double begin = week_.share(at), room = (std::min(1.0, week_.share(until)) - begin) * hours;
  const double width = sign_width * Text(word).width() + 4;
  // Pixels an hour of a page on a tablet or on paper, on a small screen and on a large one, as the style sets them out.
  constexpr std::array<std::pair<double, const char*>, 3> pages{{{3.0, "m"}, {5.3, "l"}, {6.4, "x"}}};
  for (const auto& [pixels, kind] : pages) {
    if (room * pixels < width) continue;
    row.add("text", {{"class", kind}, {"x", percent(begin)}, {"y", "10"}}, word);
    return;
  }
  // "shellac" for "shellac barrier", but never "clear" for "clear 2"
  const std::string_view first = word.substr(0, word.find(' '));
  const bool counted = std::any_of(word.begin(), word.end(), [](char c) { return c >= '0' && c <= '9'; });
  if (!counted && first.size() > 3 && first != word) word_at(row, first, at, until);
}

void Strip::finish() {
  svg_.set("height", number(down_));
  figure_.set("style", fmt::format("height:{}px", down_));
}

}  // namespace coatday::report::page
