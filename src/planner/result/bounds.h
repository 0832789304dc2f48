#pragma once
// What the search has proved.

#include "job/plan.h"
#include "planner/model/time_grid.h"
#include "solver/solve.h"

namespace coatday::planner {

/// It proves things of these loads only.
void write_bounds(job::Plan&, const solver::Found&, const Grid&);

}  // namespace coatday::planner
