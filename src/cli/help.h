#pragma once
// The program's own help, written by hand; each command has its text in its own file.

#include <string_view>

namespace coatday::cli {

[[nodiscard]] std::string_view help();
[[nodiscard]] std::string_view version();

}  // namespace coatday::cli
