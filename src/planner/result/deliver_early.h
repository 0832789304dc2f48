#pragma once
// When each piece may be delivered, once all else has its time.

#include "planner/model/model.h"

namespace coatday::planner {

/// Moves each delivery to the first open time after what it waits for. A search that keeps an earlier plan may leave a delivery later, because
/// only the last of all counts for the search.
void deliver_early(const TaskGraph&, const solver::Problem&, solver::Schedule&);

}  // namespace coatday::planner
