#include "planner/model/exhaust.h"

#include <algorithm>
#include <map>

#include "job/stages.h"
#include "planner/tasks/vapour.h"

namespace coatday::planner {

namespace {

using solver::Time;

/// How what is done changes, from a time on, what is taken.
using Taken = std::map<Time, int>;

/// What is done may have been more than the exhaust carries: then it takes all of it, and nothing else goes on.
void take_what_is_done(solver::Problem& problem, int exhaust, const Taken& changes) {
  int taken = 0;
  for (auto at = changes.begin(); at != changes.end(); ++at) {
    taken += at->second;
    if (taken <= 0) continue;
    solver::Activity activity;
    activity.starts = {{at->first, at->first + 1}};
    activity.end = solver::shift(std::next(at)->first - at->first);
    activity.demands = {{exhaust, std::min(taken, airflow_parts)}};
    problem.activities.push_back(std::move(activity));
  }
}

}  // namespace

void add_exhaust(Model& model, const shop::Ventilation& shop, const TaskGraph& graph, Clocks& clocks, const Grid& grid) {
  if (!shop.airflow) return;
  solver::Problem& problem = model.problem;
  const auto tag = static_cast<solver::Tag>(model.requirements.size());
  model.requirements.push_back({Requirement::Kind::airflow, 0});
  const auto exhaust = static_cast<int>(problem.resources.size());
  problem.resources.push_back({airflow_parts, tag, 0});
  Taken done;
  for (std::size_t t = 0; t < graph.tasks.size(); ++t) {
    const Task& task = graph.tasks[t];
    if (!task.vapour) continue;
    const int parts = parts_of_airflow(*task.vapour, *shop.airflow);
    const solver::Function dry =
        clocks.wait_function(grid, StageOf{job::wet_until(*task.product)}, task, finish::Estimate::expected, Rounding::up);
    if (task.done) {
      const Time from = std::max(problem.origin, grid.down(task.done->start));
      const Time until = std::min(problem.horizon, dry->at(grid.up(task.done->end)));
      if (from >= until) continue;
      done[from] += parts;
      done[until] -= parts;
    } else {
      const auto activity = static_cast<int>(t);
      problem.holds.push_back({activity, {}, {activity, solver::Edge::end}, dry, {{exhaust, parts}}, tag});
    }
  }
  take_what_is_done(problem, exhaust, done);
}

}  // namespace coatday::planner
