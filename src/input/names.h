#pragma once
// Ids from names.

#include <map>
#include <string>
#include <string_view>

namespace coatday::input {

/// "Low shelf (oak)" -> "low-shelf-oak": lower case ASCII letters and digits, all else a hyphen or nothing.
[[nodiscard]] std::string kebab(std::string_view name);

/// Ids that differ: a second "leg" becomes "leg-2". A name without ASCII letters takes the fallback.
class Ids {
 public:
  [[nodiscard]] std::string make(std::string_view name, std::string_view fallback);

 private:
  std::map<std::string, int> next_;  // the number that an id ends with when it comes again
};

}  // namespace coatday::input
