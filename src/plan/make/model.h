#pragma once
// From tasks to the solver's mathematics. Activity i of the problem is task i of the graph.

#include "plan/make/calendar.h"
#include "plan/make/task.h"
#include "solver/problem.h"

namespace coatday::plan {

/// What a tag of the problem stands for.
struct Requirement {
  enum class Kind { after, before, calendar, people, spray_gun, place, dust, vapour, promised };
  Kind kind;
  std::size_t index = 0;  ///< into after, before, tasks, keeps or pieces, by the kind
};

struct Model {
  solver::Problem problem;
  std::vector<Requirement> requirements;  ///< by tag
  std::vector<std::size_t> keep_of_hold;  ///< index into TaskGraph::keeps
};

/// The whole problem, or only what no arrangement can change: clocks, calendars and sequence, nobody busy, everywhere to dry, no set-ups.
enum class Scope { whole, relaxed };
[[nodiscard]] Model make_model(const Job&, const Loads&, const TaskGraph&, Clocks&, const Calendar&, const Grid&, Scope);

}  // namespace coatday::plan
