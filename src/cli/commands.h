#pragma once
// The commands, one file each. A new one is declared here and has a line in commands.cpp.

#include "cli/command.h"

namespace coatday::cli {

/// The titles in the program's help, one for each group of commands.
namespace groups {
inline constexpr std::string_view plan = "Plan and work";
inline constexpr std::string_view customer = "For the customer";
inline constexpr std::string_view questions = "Ask about a plan";
inline constexpr std::string_view before_planning = "Look before you plan";
inline constexpr std::string_view help = "Help";
}  // namespace groups

[[nodiscard]] Command plan_command();
[[nodiscard]] Command page_command();
[[nodiscard]] Command buy_command();
[[nodiscard]] Command why_command();
[[nodiscard]] Command what_if_command();
[[nodiscard]] Command air_command();
[[nodiscard]] Command quote_command();
[[nodiscard]] Command card_command();
[[nodiscard]] Command sheet_command();
[[nodiscard]] Command calendar_command();
[[nodiscard]] Command check_command();
[[nodiscard]] Command area_command();
[[nodiscard]] Command finishes_command();
[[nodiscard]] Command schedules_command();
[[nodiscard]] Command wood_command();
[[nodiscard]] Command help_command();

/// All of them, in the order of the program's help.
[[nodiscard]] const std::vector<Command>& commands();

}  // namespace coatday::cli
