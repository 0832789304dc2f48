#pragma once
// Some time limits began with what is already done. Where nobody can keep them any more, the rest is planned all the same, and the plan says so.

#include <vector>

#include "planner/tasks/tasks.h"

namespace coatday::planner {

/// Takes them out of the graph: those that were over before `from`, or every one. A recoat window stays, because a coat over a closed window
/// would not hold. A limit with a remedy stays, too.
[[nodiscard]] std::vector<Before> remove_expired_limits(TaskGraph&, std::optional<Instant> from);

/// A warning for each limit that the plan does not keep. Its subject is the id of the later event.
[[nodiscard]] std::vector<job::Finding> missed_limits(const std::vector<Before>&, const TaskGraph&, const std::vector<job::Event>&);

}  // namespace coatday::planner
