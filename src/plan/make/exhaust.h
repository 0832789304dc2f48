#pragma once
// The shop's exhaust as a resource that coats share while their vapour is about.

#include "plan/make/model.h"

namespace coatday::plan {

/// From the start of each coat until it is tack-free, together within what the exhaust carries; nothing where no airflow is stated.
void add_exhaust(Model&, const shop::Ventilation&, const TaskGraph&, Clocks&, const Grid&);

}  // namespace coatday::plan
