#pragma once
// Water that the shop's air cannot hold.

#include "job/plan.h"

namespace coatday::planner {

/// Adds to the findings how much condenses while the plan runs, where the shop's file says enough about its room.
void write_condensation(job::Plan&);

}  // namespace coatday::planner
