#pragma once
// The program's own help, written by hand, and a command's, made of what it says of itself and of its options.

#include <string>
#include <string_view>

#include "cli/command.h"

namespace coatday::cli {

[[nodiscard]] std::string_view help();
[[nodiscard]] std::string help(const Command&);
[[nodiscard]] std::string_view version();

}  // namespace coatday::cli
