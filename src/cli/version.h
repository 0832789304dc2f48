#pragma once
// The version of the program.

#include <string_view>

namespace coatday::cli {

[[nodiscard]] std::string_view version();

}  // namespace coatday::cli
