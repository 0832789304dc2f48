#pragma once
// When each piece may be delivered, once all else has its time.

#include "planner/model/model.h"

namespace coatday::planner {

/// Moves what stands for a delivery to the first open time that what it waits for allows. A search that keeps an earlier plan may leave it
/// later, since only the last of all counts for it.
void deliver_early(const TaskGraph&, const solver::Problem&, solver::Schedule&);

}  // namespace coatday::planner
