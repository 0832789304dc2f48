#pragma once
// A plan beside the earlier one: what moved, from when to when.

#include <optional>
#include <vector>

#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// Nothing where there was no earlier plan.
[[nodiscard]] std::optional<Section> moved(const job::Plan&, const Texts&);
/// Events of the plan with their earlier starts; on a terminal no more than a screen.
[[nodiscard]] Table moves(const job::Plan&, const std::vector<job::Move>&, const Texts&);

}  // namespace coatday::report
