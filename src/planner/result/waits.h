#pragma once
// Why days pass on which the shop is open and nobody puts on a coat.

#include <vector>

#include "job/plan.h"

namespace coatday::planner {

/// The plan's starts have their reasons already. Empty where there is no plan.
[[nodiscard]] std::vector<job::Wait> waits_in(const job::Job&, const job::Plan&);

}  // namespace coatday::planner
