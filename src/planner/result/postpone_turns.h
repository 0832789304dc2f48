#pragma once
// Turning a part just before its next coat, not as soon as its last one allows.

#include "planner/model/model.h"

namespace coatday::planner {

/// Moves each turn as late as the next step, hours and hands allow, so that a fresh face rests upwards overnight. Nothing else moves, and no
/// turn gets earlier.
void postpone_turns(const TaskGraph&, const solver::Problem&, int people, solver::Schedule&);

}  // namespace coatday::planner
