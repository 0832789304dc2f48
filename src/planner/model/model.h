#pragma once
// From tasks to the solver's mathematics. Activity i of the problem is task i of the graph. The last activities are of tasks that a crew may do
// instead of one person.

#include <map>
#include <optional>

#include "planner/model/start_calendar.h"
#include "planner/tasks/tasks.h"
#include "solver/base/problem.h"

namespace coatday::planner {

/// What a tag of the problem stands for.
struct Requirement {
  enum class Kind { after, before, calendar, people, spray_gun, place, dust, vapour, airflow, set_aside, promised };
  Kind kind;
  std::size_t index = 0;  ///< into after, before, tasks, places or pieces, by the kind
  bool operator==(const Requirement&) const = default;
};

struct Model {
  solver::Problem problem;
  std::vector<Requirement> requirements;   ///< by tag
  std::vector<std::size_t> place_hold_of;  ///< index into TaskGraph::place_holds; further holds are of airflow and of what stands aside
  std::optional<std::size_t> room;         ///< for what is coated and may not be packed yet: a resource, where the shop limits it
  int least_room = 0;                      ///< it needs, for the largest load and for what is done
  std::map<std::size_t, int> by_crew;      ///< task that a crew may do -> the activity in which the crew does it
};

/// The whole problem; or only what no arrangement can change: clocks, calendars and sequence. Then nobody is busy, places and set-ups are free.
enum class Scope { whole, relaxed };
[[nodiscard]] Model make_model(const job::Job&, const Loads&, const TaskGraph&, Clocks&, const Calendar&, const Grid&, Scope);

}  // namespace coatday::planner
