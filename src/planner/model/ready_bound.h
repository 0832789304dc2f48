#pragma once
// What no plan of the job can be better than, however its parts are gathered and whichever side goes first.

#include "planner/model/model.h"

namespace coatday::planner {

/// Nothing can be ready before: clocks, calendars and sequence of one item of each part alone (as loads, where some of it is done), and all
/// hands-on work of the graph against all hands. Nothing where even that cannot be.
[[nodiscard]] std::optional<Instant> ready_bound(const job::Job&, const Loads&, const TaskGraph&, Clocks&, const Calendar&, const Grid&);

}  // namespace coatday::planner
