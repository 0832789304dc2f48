#pragma once
// The shop's exhaust as a resource that coats share while their vapour is about.

#include "planner/model/model.h"

namespace coatday::planner {

/// From the start of each coat until it is tack-free, together within what the exhaust carries; nothing where no airflow is stated.
void add_exhaust(Model&, const shop::Ventilation&, const TaskGraph&, Clocks&, const Grid&);

}  // namespace coatday::planner
