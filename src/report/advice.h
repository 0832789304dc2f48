#pragma once
// Phrases of what changes, and what would help. Inside this room only.

#include "plan/propose.h"
#include "report/lines.h"

namespace coatday::report {

[[nodiscard]] std::string cans_words(const std::vector<plan::Bought>&, Units);
/// What a change does: "keep the shop at 22 °C: ready Fri 5 Feb 08:00, 3 days 8 h sooner".
[[nodiscard]] std::string help_words(const plan::Plan&, const plan::Help&, Units);
/// Heat and vapour do not go together, whatever the plan says.
[[nodiscard]] std::string heat_caution_words();
[[nodiscard]] Lines heat_caution(const Look&);
[[nodiscard]] Lines change_title(const std::string& order, const plan::Plan&, const Look&);
/// The few lines beside a plan; none where nothing helps.
[[nodiscard]] Lines advice(const plan::Plan&, const plan::Advice&, const Look&);

}  // namespace coatday::report
