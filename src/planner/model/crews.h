#pragma once
// Long dry work, done by one person or by a crew.

#include "planner/model/model.h"

namespace coatday::planner {

/// The task as its crew does it.
[[nodiscard]] Task by_crew(Task);

/// Where the schedule has a crew do a task, the crew does it from now on, in tasks, problem and schedule. Activity i is task i again.
void fix_crews(TaskGraph&, Model&, solver::Schedule&);

}  // namespace coatday::planner
