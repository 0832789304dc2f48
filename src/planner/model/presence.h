#pragma once
// Which tasks bring people into the room, and what makes one visit of them.

#include "planner/model/start_calendar.h"
#include "planner/tasks/tasks.h"
#include "solver/base/problem.h"

namespace coatday::planner {

/// Two stretches of work are of one visit with so much working time between them at most. Less work than that is an errand. Judgement, no source.
constexpr Minutes visit_gap{15};
/// After light dust people wipe down and tidy for so long at most. Judgement, no source.
constexpr Minutes most_tidying{30};

/// By task; what is done takes no part.
[[nodiscard]] solver::Presence presence_of(const shop::Shop&, const TaskGraph&, const Calendar&, const Grid&);

}  // namespace coatday::planner
