#pragma once
// What to buy: finishes in whole cans, abrasives and other small things.

#include <optional>
#include <string>
#include <vector>

#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

[[nodiscard]] std::optional<Section> purchase(const job::Plan&, const Texts&);
/// "1 x 1 l and 2 x 250 ml"; empty where there are none.
[[nodiscard]] std::string cans_text(const std::vector<job::Bought>&, Units);
/// "oil stain", "two-part paint, hardener"
[[nodiscard]] std::string purchase_name(const job::Plan&, const job::Purchase&);

/// A sentence for each product of which one more can is bought, since too little would be left.
[[nodiscard]] std::vector<std::string> spare_cans(const job::Plan&, Units);

}  // namespace coatday::report
