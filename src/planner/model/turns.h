#pragma once
// Which order goes first where none was promised a day.

#include <map>
#include <string>

#include "job/job.h"
#include "planner/model/time_grid.h"

namespace coatday::planner {

/// By the names of the orders without a promise: how much younger each counts than the oldest. The one with the earlier start is the older, then
/// the one whose file comes first. Empty where fewer than two wait.
[[nodiscard]] std::map<std::string, solver::Time> turns(const job::Order&, const Grid&);

}  // namespace coatday::planner
