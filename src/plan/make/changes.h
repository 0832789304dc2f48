#pragma once
// A plan beside an earlier one.

#include "plan/planner.h"

namespace coatday::plan {

/// What moved and what stayed, event by event. The events of the plan are by start.
[[nodiscard]] Changes changes_since(const Starts& earlier, const Plan&);

}  // namespace coatday::plan
