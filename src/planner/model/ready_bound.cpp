#include "planner/model/ready_bound.h"

#include <algorithm>

#include "planner/model/hands_bound.h"
#include "planner/tasks/expired_limits.h"
#include "solver/solve.h"

namespace coatday::planner {

namespace {

bool lies(const Loads& loads) {
  return std::any_of(loads.loads.begin(), loads.loads.end(), [](const Load& l) { return l.support != piece::Support::hooks; });
}

}  // namespace

std::optional<Instant> ready_bound(const job::Job& job, const Loads& loads, const TaskGraph& graph, Clocks& clocks,
                                   const Calendar& calendar, const Grid& grid) {
  const Loads alone = job.order.history.empty() ? make_loads(job, Batching::one_item) : loads;
  solver::Time soonest = solver::unreachable;
  for (const Sides sides : {Sides::hidden_first, Sides::show_first}) {
    TaskGraph tasks = make_tasks(job, alone, graph.mixings, sides, graph.wood);
    static_cast<void>(remove_expired_limits(tasks, std::nullopt));  // a plan may have to miss them
    soonest = std::min(soonest, solver::ready_bound(make_model(job, alone, tasks, clocks, calendar, grid, Scope::relaxed).problem));
    if (!lies(alone)) break;
  }
  if (soonest >= solver::unreachable) return std::nullopt;
  return grid.instant(std::max(soonest, busy_until(job, graph, calendar)));
}

}  // namespace coatday::planner
