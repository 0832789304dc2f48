#include "solver/base/score.h"

#include <algorithm>

#include "solver/base/index.h"

namespace coatday::solver {

Score score(const Problem& problem, const Schedule& schedule) {
  Score result;
  bool first = true;
  for (const Goal& goal : problem.goals) {
    const Assignment& reached = schedule.activities[at(goal.activity)];
    if (!reached.present) continue;
    result.lateness += goal.weight * std::max(0.0, static_cast<double>(reached.start) - goal.due);
    result.ready = first ? reached.start : std::max(result.ready, reached.start);
    result.total += reached.start;
    first = false;
  }
  for (std::size_t i = 0; i < problem.activities.size(); ++i) {
    const Assignment& run = schedule.activities[i];
    const std::optional<Time>& kept = problem.activities[i].kept;
    if (kept && run.present && run.start != *kept) ++result.moved;
    if (problem.activities[i].family >= 0 && run.present && !run.shared) ++result.setups;
  }
  return result;
}

}  // namespace coatday::solver
