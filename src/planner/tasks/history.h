#pragma once
// What is done already, as the order records it.

#include <vector>

#include "planner/tasks/tasks.h"

namespace coatday::planner {

/// Recorded tasks stay as they were. If something was carried in or turned before one of them, that is past, recorded or not.
void apply_history(const job::Job&, TaskGraph&);

/// A warning for each record that the plan does not have. An error for each with unrecorded work before it: a plan would have to sand below a
/// coat.
[[nodiscard]] std::vector<job::Finding> validate_history(const job::Job&, const TaskGraph&);

}  // namespace coatday::planner
