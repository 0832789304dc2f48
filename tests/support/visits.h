#pragma once
// Visits of a plan, counted minute by minute: a third way beside those of the planner and the checker.

#include "job/plan.h"

namespace coatday::test {

/// What the plan still asks people to come for. Times must be whole minutes, and no light dust may settle for longer than the shop says.
[[nodiscard]] std::size_t visits_by_the_minute(const job::Plan&, const job::Job&);

}  // namespace coatday::test
