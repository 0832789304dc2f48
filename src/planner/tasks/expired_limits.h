#pragma once
// Time limits that begin with what is already done: where they can no longer be kept, the rest is planned all the same, and the plan says so.

#include <vector>

#include "planner/tasks/tasks.h"

namespace coatday::planner {

/// Takes them out of the graph: those that were over before `from`, or every one. A recoat window stays, since a coat over a closed one would
/// not hold; so does what a remedy makes good.
[[nodiscard]] std::vector<Before> remove_expired_limits(TaskGraph&, std::optional<Instant> from);

/// A warning for each that the plan's events do not keep, by the later event's id.
[[nodiscard]] std::vector<job::Finding> missed_limits(const std::vector<Before>&, const TaskGraph&, const std::vector<job::Event>&);

}  // namespace coatday::planner
