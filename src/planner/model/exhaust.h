#pragma once
// The shop's exhaust as a resource. Coats share it while their vapour is about.

#include "planner/model/model.h"

namespace coatday::planner {

/// Each coat uses it from its start until it is tack-free. Together they stay within what the exhaust carries. Adds nothing where the shop
/// states no airflow.
void add_exhaust(Model&, const shop::Ventilation&, const TaskGraph&, Clocks&, const Grid&);

}  // namespace coatday::planner
