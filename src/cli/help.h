#pragma once
// The help texts, written by hand. A test holds them to the options that there are.

#include <optional>
#include <string>
#include <string_view>

#include "cli/arguments.h"

namespace coatday::cli {

/// The text for a command, or the program's own.
[[nodiscard]] std::string_view help(std::optional<Command>);
[[nodiscard]] std::string_view version();

}  // namespace coatday::cli
