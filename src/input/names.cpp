#include "input/names.h"

namespace coatday::input {
Ids::Ids(std::initializer_list<std::string_view> reserved, std::string_view suffix) : suffix_(suffix) {
  taken_.insert(reserved.begin(), reserved.end());
}

bool Ids::is_free(const std::string& id) const {
  if (taken_.contains(id)) return false;
  if (suffix_.empty()) return true;
  return !taken_.contains(id + suffix_) && !(id.ends_with(suffix_) && taken_.contains(id.substr(0, id.size() - suffix_.size())));
}

std::string Ids::make(std::string_view name, std::string_view fallback) {
  std::string first = kebab(name);
  if (first.empty()) first = fallback;
  std::string id = first;
  int& again = next_.emplace(first, 2).first->second;
  while (!is_free(id)) id = first + "-" + std::to_string(again++);
  taken_.insert(id);
  return id;
}

}  // namespace coatday::input
