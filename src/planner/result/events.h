#pragma once
// From a solver's schedule back to events, places and dates.

#include "planner/result/place_assignment.h"

namespace coatday::planner {

/// Fills in the plan's events, places, face counts and the pieces' dates. The clocks' air may reach further than the solver's did.
void write_events(job::Plan&, const job::Job&, const Loads&, const TaskGraph&, const solver::Schedule&, const std::vector<PlaceAssignment>&,
                  Clocks&, const Grid&);

}  // namespace coatday::planner
