#pragma once
// Ids from names.

#include <string>
#include <string_view>

namespace coatday {

/// "Low shelf (oak)" -> "low-shelf-oak": lower case ASCII letters and digits, all else a hyphen or nothing.
[[nodiscard]] std::string kebab(std::string_view name);

}  // namespace coatday
