#pragma once
// No plan of the job can be better than this, whatever its loads, and whichever side goes first.

#include "planner/model/model.h"

namespace coatday::planner {

/// Nothing can be ready before. It takes clocks, calendars and sequence of one item of each part alone (of the loads, where some of it is
/// done), and the sum of all hands-on work. Returns nothing where even that is impossible.
[[nodiscard]] std::optional<Instant> ready_bound(const job::Job&, const Loads&, const TaskGraph&, Clocks&, const Calendar&, const Grid&);

}  // namespace coatday::planner
