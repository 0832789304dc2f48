#pragma once
// What the hours of hands allow, whatever the order of the work.

#include "planner/model/model.h"

namespace coatday::planner {

/// When everybody working all hours would have done what is left before the deliveries; 0 where nothing is left.
[[nodiscard]] solver::Time busy_until(const job::Job&, const TaskGraph&, const Calendar&);

/// No plan is late by fewer days, all pieces together. `alone`: so late is each piece at least, whatever the others do. Of all pieces that may
/// not start before one day and are due by another, one is over no earlier than the hours of hands for all of them.
[[nodiscard]] int days_late_bound(const job::Job&, const TaskGraph&, const Calendar&, const Grid&, const std::vector<int>& alone);

}  // namespace coatday::planner
