#include "job/load_items.h"

#include <algorithm>
#include <charconv>
#include <optional>

namespace coatday::job {
namespace {

std::optional<int> number(std::string_view text) {
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  const bool whole = error == std::errc{} && end == text.data() + text.size() && value >= 1;
  return whole ? std::optional(value) : std::nullopt;
}

std::optional<ItemRange> range_of(std::string_view text) {
  const std::size_t dot = text.find('.');
  ItemRange range{std::string(text.substr(0, dot)), 1, 1};
  if (range.part.empty()) return std::nullopt;
  if (dot == std::string_view::npos) return range;
  const std::string_view items = text.substr(dot + 1);
  const std::size_t dash = items.find('-');
  const auto first = number(items.substr(0, dash));
  const auto last = dash == std::string_view::npos ? first : number(items.substr(dash + 1));
  if (!first || !last || *last < *first) return std::nullopt;
  range.first = *first;
  range.last = *last;
  return range;
}

bool within(const ItemRange& one, const LoadItems& those) {
  return std::any_of(those.begin(), those.end(),
                     [&](const ItemRange& other) { return other.part == one.part && other.first <= one.first && one.last <= other.last; });
}

}  // namespace

std::string load_id(const LoadItems& items, const std::vector<bool>& only_item) {
  std::string id;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const ItemRange& range = items[i];
    id += (i > 0 ? "+" : "") + range.part;
    if (only_item[i]) continue;
    id += "." + std::to_string(range.first);
    if (range.last > range.first) id += "-" + std::to_string(range.last);
  }
  return id;
}

LoadItems items_of(std::string_view load_id) {
  LoadItems items;
  for (std::size_t begin = 0; begin <= load_id.size();) {
    const std::size_t end = std::min(load_id.find('+', begin), load_id.size());
    const auto range = range_of(load_id.substr(begin, end - begin));
    if (!range) return {};
    items.push_back(*range);
    begin = end + 1;
  }
  return items;
}

bool within(const LoadItems& these, const LoadItems& those) {
  return !these.empty() && std::all_of(these.begin(), these.end(), [&](const ItemRange& one) { return within(one, those); });
}

}  // namespace coatday::job
