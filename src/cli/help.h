#pragma once
// The help of the program and of each command, made from the rows of commands.cpp.

#include <string>
#include <string_view>
#include <vector>

#include "cli/command.h"

namespace coatday::cli {

inline constexpr std::string_view about_coatday =
    "coatday plans the finishing of furniture made to order: which coat goes on which face and when, what to buy, and when a piece may be "
    "handled, delivered and used.";
inline constexpr std::string_view exit_statuses =
    "Exit status: 0 all is well; 1 no plan is possible or a face would be left behind; 2 a mistake in a file or on the command line; 3 a "
    "fault in coatday.";

[[nodiscard]] std::string help();
[[nodiscard]] std::string help(const Command&);
/// As typed: "coatday plan ORDER.yaml... [options]".
[[nodiscard]] std::vector<std::string> usage(const Command&);
[[nodiscard]] std::vector<std::string> examples(const Command&);
[[nodiscard]] std::string_view version();

}  // namespace coatday::cli
