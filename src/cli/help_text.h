#pragma once
// The help of the program, of each command and of each topic, made from the rows of commands.cpp and from topics/.

#include <string>
#include <string_view>
#include <vector>

#include "cli/command.h"
#include "cli/topics.h"

namespace coatday::cli {

inline constexpr std::string_view about_coatday =
    "coatday plans the finishing of furniture made to order: which coat goes on which face and when, what to buy, and when a piece may be "
    "handled, delivered and used.";
[[nodiscard]] std::string help();
[[nodiscard]] std::string help(const Command&);
[[nodiscard]] std::string help(const Topic&);

/// As typed: "coatday plan ORDER.yaml... [options]".
[[nodiscard]] std::vector<std::string> usage(const Command&);
[[nodiscard]] std::vector<std::string> examples(const Command&);
/// What each exit status means, as in outcome.h.
[[nodiscard]] std::vector<Entry> exit_statuses();

}  // namespace coatday::cli
