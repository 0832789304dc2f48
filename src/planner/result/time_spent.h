#pragma once
// Where the time of each order goes.

#include "planner/model/model.h"

namespace coatday::planner {

/// Goes back from each order's last safe delivery through what decided each start. A long wait is looked at in at most forty moments.
[[nodiscard]] std::vector<job::TimeSpent> time_spent(const job::Job&, const TaskGraph&, const Model&, const solver::Schedule&,
                                                     const Calendar&, const Grid&);

}  // namespace coatday::planner
