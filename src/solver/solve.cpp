#include "solver/solve.h"

#include <algorithm>

#include "solver/contradiction.h"
#include "solver/exact.h"
#include "solver/improvement.h"
#include "solver/lower_bound.h"

namespace coatday::solver {
namespace {

constexpr long first_conflicts = 1000;
constexpr int parts_at_a_time = 20;
constexpr int few = 300;  // activities for which the thorough bounds take no time to speak of

// What it took to refute every schedule is not traced: all there is.
Contradiction all_tags(const Problem& problem) {
  std::vector<Tag> tags;
  for (const Resource& resource : problem.resources) tags.push_back(resource.tag);
  for (const Activity& activity : problem.activities) tags.push_back(activity.tag);
  for (const MinimumLag& lag : problem.minimum_lags) tags.push_back(lag.tag);
  for (const MaximumLag& lag : problem.maximum_lags) tags.push_back(lag.tag);
  for (const Hold& hold : problem.holds) tags.push_back(hold.tag);
  for (const Exclusion& exclusion : problem.exclusions) tags.push_back(exclusion.tag);
  std::sort(tags.begin(), tags.end());
  tags.erase(std::unique(tags.begin(), tags.end()), tags.end());
  if (!tags.empty() && tags.front() < 0) tags.erase(tags.begin());
  return {tags, -1};
}

// What the bounds alone say.
void bound_by(const Problem& problem, const Bounds& bounds, Incumbent& incumbent) {
  Time ready = problem.goals.empty() ? 0 : -never;
  double lateness = 0;
  for (const Goal& goal : problem.goals) {
    if (problem.activities[static_cast<std::size_t>(goal.activity)].optional) continue;
    ready = std::max(ready, bounds.earliest(goal.activity));
    lateness += goal.weight * std::max(0.0, static_cast<double>(bounds.earliest(goal.activity)) - goal.due);
  }
  incumbent.bound(ready, lateness);
}

Outcome outcome_of(const Incumbent& incumbent, const Improvement& improvement) {
  if (incumbent.best()) return *incumbent.best();
  const int worst = improvement.troubles().worst();
  return NotFound{worst, improvement.troubles().blockers(worst), incumbent.ready_bound()};
}

// Passes, the exact search on the whole and on parts of the best schedule, in turns that grow. False: proven that there is no schedule.
bool search(const Network& network, const Bounds& bounds, Budget& budget, Incumbent& incumbent, Improvement& improvement) {
  budget.share(network.size > few ? 0.3 : 0.04);
  improvement.find();
  const bool possible = Search::supports(network.problem);
  if (!incumbent.best() && !(possible && Exact::light(network.problem, bounds, incumbent))) {
    budget.share(1);
    improvement.find();
  }
  budget.share(0.04);
  improvement.improve();
  if (possible && !incumbent.proven() && !budget.spent() && Exact::light(network.problem, bounds, incumbent)) {
    Exact exact(network, bounds, budget, incumbent);
    for (long conflicts = first_conflicts; !budget.spent() && exact.whole(conflicts); conflicts += conflicts / 2) {
      for (bool better = true; better && incumbent.best() && !exact.over() && !budget.spent();) better = exact.parts(parts_at_a_time);
      if (exact.over()) break;
      budget.share(0.05);
      improvement.improve();
    }
    if (exact.infeasible()) return false;
  }
  budget.share(1);
  improvement.improve();
  return true;
}

}  // namespace

Outcome solve(const Problem& problem, const Limits& limits) {
  Budget budget(limits);
  const Network network(problem);
  if (auto contradiction = over_capacity(network)) return std::move(*contradiction);
  Bounds bounds(network);
  if (!bounds.propagate()) return explain(network, bounds);
  Incumbent incumbent(network, budget);
  bound_by(problem, bounds, incumbent);
  if (budget.extended()) {
    const bool hurried = limits.seconds > 0 && limits.seconds < 2 && network.size > few;
    const LowerBound lower(network, bounds, hurried ? LowerBound::Effort::quick : LowerBound::Effort::thorough);
    const Time ready = lower.ready();
    if (ready >= never) return all_tags(problem);
    bounds = lower.bounds();
    bound_by(problem, bounds, incumbent);
    incumbent.bound(ready, 0);
  }
  Improvement improvement(network, bounds, budget, incumbent);
  if (!budget.extended()) {
    improvement.find();
    if (incumbent.best()) improvement.improve();
  } else if (!search(network, bounds, budget, incumbent, improvement)) {
    return all_tags(problem);
  }
  return outcome_of(incumbent, improvement);
}

}  // namespace coatday::solver
