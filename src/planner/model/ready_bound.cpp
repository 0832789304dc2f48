#include "planner/model/ready_bound.h"

#include <algorithm>

#include "planner/tasks/expired_limits.h"
#include "solver/solve.h"

namespace coatday::planner {

namespace {

bool delivers(const job::Job& job, const Task& task) {
  const job::OrderPiece& piece = job.order.pieces[*task.piece];
  return std::any_of(piece.work.begin(), piece.work.end(),
                     [&](const job::OrderWork& w) { return w.delivery && task.step_id.load.empty() && task.step_id.step == w.work.id; });
}

/// When everybody working all hours would have done what has to be done before delivery.
solver::Time busy_until(const job::Job& job, const TaskGraph& graph, const Calendar& calendar) {
  Minutes work{0};
  for (const Task& task : graph.tasks) {
    const bool counts = task.piece && !task.optional && !task.done && !task.milestone && !delivers(job, task);
    if (!counts) continue;
    const Minutes by_crew = task.crew ? task.crew->hands_on * task.crew->people : Minutes::max();
    work += std::min(task.hands_on * task.people, by_crew);
  }
  const auto steps = static_cast<solver::Time>(work / job::time_step) / std::max(1, job.shop.people);
  if (steps == 0 || calendar.working().empty()) return 0;
  return std::min(calendar.pausing_end(steps)->at(0), calendar.horizon());
}

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
