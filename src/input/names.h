#pragma once
// Ids from names.

#include <initializer_list>
#include <map>
#include <set>
#include <string>
#include <string_view>

#include "quantity/kebab.h"

namespace coatday::input {

/// Ids that differ: a second "leg" becomes "leg-2". A name without ASCII letters takes the fallback.
class Ids {
 public:
  /// `reserved` are ids that mean something else. Whatever has an id also owns the same id with this suffix.
  explicit Ids(std::initializer_list<std::string_view> reserved = {}, std::string_view suffix = {});

  [[nodiscard]] std::string make(std::string_view name, std::string_view fallback);

 private:
  [[nodiscard]] bool is_free(const std::string& id) const;

  std::set<std::string> taken_;
  std::map<std::string, int> next_;  // the number that an id ends with when it comes again
  std::string suffix_;
};

}  // namespace coatday::input
