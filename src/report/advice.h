#pragma once
// Phrases of what changes, and what would help. Inside this room only.

#include "plan/propose.h"
#include "report/lines.h"

namespace coatday::report {

[[nodiscard]] std::string cans_words(const std::vector<plan::Bought>&, Units);
/// Heat and vapour do not go together, whatever the plan says.
[[nodiscard]] Lines heat_caution(const Look&);
[[nodiscard]] Lines change_title(const std::string& order, const plan::Plan&, const Look&);
/// The few lines beside a plan; none where nothing helps.
[[nodiscard]] Lines advice(const plan::Plan&, const plan::Advice&, const Look&);

}  // namespace coatday::report
