#include "solver/base/score.h"

#include <algorithm>

#include "solver/base/index.h"

namespace coatday::solver {

void add_goal(const Goal& goal, Time reached, Score& score) {
  score.lateness += goal.weight * std::max(0.0, static_cast<double>(reached) - goal.due);
  score.ready = std::max(score.ready, reached);
  score.total += reached;
  if (!goal.turn) return;
  const double days = std::max(0.0, static_cast<double>(reached) - goal.turn->soonest) / goal.turn->day;
  score.waits += goal.weight * days * days;
}

Score score(const Problem& problem, const Schedule& schedule) {
  Score result;
  result.ready = -unreachable;
  for (const Goal& goal : problem.goals) {
    const Assignment& reached = schedule.activities[at(goal.activity)];
    if (reached.present) add_goal(goal, reached.start, result);
  }
  if (result.ready == -unreachable) result.ready = 0;
  for (std::size_t i = 0; i < problem.activities.size(); ++i) {
    const Assignment& run = schedule.activities[i];
    const std::optional<Time>& kept = problem.activities[i].kept;
    if (kept && run.present && run.start != *kept) ++result.moved;
    if (problem.activities[i].family >= 0 && run.present && !run.shared) ++result.setups;
  }
  return result;
}

}  // namespace coatday::solver
