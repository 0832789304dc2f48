#pragma once
// Ids from names.

#include <map>
#include <string>
#include <string_view>

#include "quantity/kebab.h"

namespace coatday::input {

/// Ids that differ: a second "leg" becomes "leg-2". A name without ASCII letters takes the fallback.
class Ids {
 public:
  [[nodiscard]] std::string make(std::string_view name, std::string_view fallback);

 private:
  std::map<std::string, int> next_;  // the number that an id ends with when it comes again
};

}  // namespace coatday::input
