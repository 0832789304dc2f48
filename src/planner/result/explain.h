#pragma once
// Why each event starts when it does.

#include "planner/model/model.h"

namespace coatday::planner {

/// Writes one sentence for each event: what decided its start. The events must be complete.
void explain_starts(job::Plan&, const TaskGraph&, const Model&, const solver::Schedule&, Clocks&, const Grid&);

}  // namespace coatday::planner
