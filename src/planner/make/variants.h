#pragma once
// What is decided before a search: how parts are gathered into loads, and which side of what lies goes first.

#include <functional>

#include "planner/make/make_plan.h"
#include "planner/tasks/task.h"

namespace coatday::planner {

struct Ways {
  Split split = Split::to_fit;
  Sides sides = Sides::hidden_first;
};

/// Plans one way: by its own time, or quickly where the request leaves none.
using PlanOneWay = std::function<job::Plan(const job::Request&, const Ways&)>;

/// The usual way, or the one in which the history and an earlier plan were made. Where nothing is begun, and there is time to search or no plan
/// the usual way, other ways too; another is taken only where it is an hour less late or ready earlier. A finding says what was tried.
[[nodiscard]] job::Plan best_of_ways(const job::Job&, const job::Request&, Purpose, const PlanOneWay&);

}  // namespace coatday::planner
