#pragma once
// A plan beside an earlier one.

#include "job/plan.h"
#include "job/request.h"

namespace coatday::planner {

/// What moved and what stayed, event by event. The events of the plan are by start.
[[nodiscard]] job::Changes changes_since(const job::Starts& earlier, const job::Plan&);

}  // namespace coatday::planner
