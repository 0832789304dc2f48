#include "input/names.h"

namespace coatday::input {
std::string Ids::make(std::string_view name, std::string_view fallback) {
  std::string id = kebab(name);
  if (id.empty()) id = fallback;
  const auto [again, is_new] = next_.emplace(id, 2);
  if (is_new) return id;
  std::string unique;
  do {
    unique = id + "-" + std::to_string(again->second++);
  } while (!next_.emplace(unique, 2).second);
  return unique;
}

}  // namespace coatday::input
