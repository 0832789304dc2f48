#include "solver/heuristic/no_worse.h"

#include <algorithm>
#include <map>

namespace coatday::solver {
namespace {

Time end_of_day(const std::vector<Time>& days, Time t) {
  const auto next = std::upper_bound(days.begin(), days.end(), t);
  return next == days.end() ? t : std::max(t, *next - 1);
}

class Caps {
 public:
  Caps(const Problem& problem, const Schedule& schedule) : problem_(problem), schedule_(schedule) {
    for (const Goal& goal : problem.goals) {
      if (!reached(goal).present) continue;
      ready_ = std::max(ready_, reached(goal).start);
      if (goal.group < 0) continue;
      const auto group = of_group_.emplace(goal.group, reached(goal).start).first;
      group->second = std::max(group->second, reached(goal).start);
    }
  }

  [[nodiscard]] Time of(const Goal& goal) const {
    const Time start = reached(goal).start;
    if (!problem_.presence) return std::max(start, std::min(goal.due, ready_));
    const std::vector<Time>& days = problem_.presence->days;
    if (start > goal.due) return end_of_day(days, start);
    const Time last = goal.group < 0 ? start : of_group_.at(goal.group);
    return std::max(start, std::min(goal.due, end_of_day(days, last)));
  }

 private:
  [[nodiscard]] const Assignment& reached(const Goal& goal) const { return schedule_.activities[at(goal.activity)]; }

  const Problem& problem_;
  const Schedule& schedule_;
  Time ready_ = -unreachable;
  std::map<int, Time> of_group_;
};

}  // namespace

Bounds no_worse(const Network& network, const Schedule& schedule) {
  Bounds all(network);
  all.propagate();
  Bounds bounds = all;
  const Caps caps(network.problem, schedule);
  for (const Goal& goal : network.problem.goals) {
    if (schedule.activities[at(goal.activity)].present) bounds.start_by(goal.activity, caps.of(goal));
  }
  return bounds.propagate() ? bounds : all;
}

}  // namespace coatday::solver
