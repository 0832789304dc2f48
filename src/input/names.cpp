#include "input/names.h"

#include <algorithm>
#include <charconv>

namespace coatday::input {
namespace {

// The number at the end of an id that begins with a stem and a hyphen: 12 of "leg-12". 0 where there is none.
int number_after(std::string_view id, std::size_t stem) {
  if (id.size() <= stem + 1 || id[stem] != '-' || id[stem + 1] == '0') return 0;
  int number = 0;
  const auto [end, error] = std::from_chars(id.data() + stem + 1, id.data() + id.size(), number);
  return error == std::errc() && end == id.data() + id.size() ? number : 0;
}

bool among(int number, int count) { return count > 1 && number >= 1 && number <= count; }

}  // namespace

Ids::Ids(std::initializer_list<std::string_view> reserved, std::string_view suffix) : suffix_(suffix) {
  for (const std::string_view id : reserved) counts_.emplace(id, 1);
}

bool Ids::is_free(const std::string& id, int count) const {
  if (counts_.contains(id)) return false;
  if (!suffix_.empty() && counts_.contains(id + suffix_)) return false;
  if (!suffix_.empty() && id.ends_with(suffix_) && counts_.contains(id.substr(0, id.size() - suffix_.size()))) return false;
  const std::size_t hyphen = std::min(id.rfind('-'), id.size());
  const auto several = counts_.find(id.substr(0, hyphen));
  if (several != counts_.end() && among(number_after(id, hyphen), several->second)) return false;
  if (count < 2) return true;
  const std::string numbered = id + "-";
  for (auto other = counts_.lower_bound(numbered); other != counts_.end() && other->first.starts_with(numbered); ++other) {
    if (among(number_after(other->first, id.size()), count)) return false;
  }
  return true;
}

std::string Ids::make(std::string_view name, std::string_view fallback, int count) {
  std::string first = kebab(name);
  if (first.empty()) first = fallback;
  std::string id = first;
  int& again = next_.emplace(first, 2).first->second;
  while (!is_free(id, count)) id = first + "-" + std::to_string(again++);
  counts_.emplace(id, count);
  return id;
}

}  // namespace coatday::input
