#pragma once
// From tasks to the solver's mathematics. Activity i of the problem is task i of the graph;
// after them come those of tasks that a crew may do instead.

#include <map>

#include "planner/model/start_calendar.h"
#include "planner/tasks/tasks.h"
#include "solver/base/problem.h"

namespace coatday::planner {

/// What a tag of the problem stands for.
struct Requirement {
  enum class Kind { after, before, calendar, people, spray_gun, place, dust, vapour, airflow, promised };
  Kind kind;
  std::size_t index = 0;  ///< into after, before, tasks, places or pieces, by the kind
};

struct Model {
  solver::Problem problem;
  std::vector<Requirement> requirements;   ///< by tag
  std::vector<std::size_t> place_hold_of;  ///< index into TaskGraph::place_holds; further holds are of airflow
  std::map<std::size_t, int> by_crew;      ///< by task that a crew may do: the activity in which it does, after those of the tasks
};

/// The whole problem, or only what no arrangement can change: clocks, calendars and sequence, nobody busy, everywhere to dry, no set-ups.
enum class Scope { whole, relaxed };
[[nodiscard]] Model make_model(const job::Job&, const Loads&, const TaskGraph&, Clocks&, const Calendar&, const Grid&, Scope);

/// What a schedule has a crew do is so from now on, in tasks, problem and schedule alike: activity i is task i again.
void fix_crews(TaskGraph&, Model&, solver::Schedule&);

}  // namespace coatday::planner
