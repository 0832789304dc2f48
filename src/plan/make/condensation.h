#pragma once
// Water that the shop's air cannot hold.

#include "plan/plan.h"

namespace coatday::plan {

/// Adds to the findings how much condenses while the plan runs, where the shop's file tells enough of its room.
void write_condensation(Plan&);

}  // namespace coatday::plan
