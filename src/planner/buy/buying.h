#pragma once
// What the plan's events use up.

#include "job/plan.h"

namespace coatday::planner {

/// Fills in purchase and sundries from the events.
void write_purchase(job::Plan&, const job::Job&);

}  // namespace coatday::planner
