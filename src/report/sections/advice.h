#pragma once
// Phrases of what changes, and what would help. Inside this room only.

#include "job/advice.h"
#include "report/document/lines.h"

namespace coatday::report {

[[nodiscard]] std::string cans_words(const std::vector<job::Bought>&, Units);
/// What a change does: "keep the shop at 22 °C: ready Fri 5 Feb 08:00, 3 days 8 h sooner".
[[nodiscard]] std::string help_words(const job::Plan&, const job::Help&, Units);
/// Heat and vapour do not go together, whatever the plan says.
[[nodiscard]] std::string heat_caution_words();
[[nodiscard]] Lines heat_caution(const TextStyle&);
[[nodiscard]] Lines change_title(const std::string& order, const job::Plan&, const TextStyle&);
/// The few lines beside a plan; none where nothing helps.
[[nodiscard]] Lines advice(const job::Plan&, const job::Advice&, const TextStyle&);

}  // namespace coatday::report
