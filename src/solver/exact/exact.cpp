#include "solver/exact/exact.h"

#include <algorithm>
#include <tuple>

namespace coatday::solver {
namespace {

constexpr long conflicts_of_a_part = 500;
constexpr double smallest = 8;
constexpr long most_work = 2'000'000;  // moves of bounds
constexpr double heavy = 4e8;
constexpr double light_a_second = 6e6;

Intervals within(const Intervals& starts, Time first, Time last) {
  Intervals result;
  for (const Interval& i : starts) {
    const Interval rest{std::max(i.begin, first), std::min(i.end, last + 1)};
    if (rest.begin < rest.end) result.push_back(rest);
  }
  return result;
}

// Bounds of all schedules that are as good as the best. If the best could be less late, then also a later one could be better.
Bounds bounds_of_better(const Problem& problem, Bounds bounds, const Incumbent& incumbent) {
  if (!incumbent.best() || incumbent.best()->score.lateness > incumbent.lateness_bound()) return bounds;
  Bounds tighter = bounds;
  for (const Goal& goal : problem.goals) {
    if (!problem.activities[at(goal.activity)].optional) tighter.start_by(goal.activity, incumbent.best()->score.ready);
  }
  return tighter.propagate(most_work) ? tighter : bounds;
}

// The problem with only the starts and the horizon that the bounds allow. The search looks at each time, so this makes it faster.
Problem within(const Problem& problem, const Bounds& bounds) {
  Problem result = problem;
  Time last = 0;
  for (int a = 0; a < static_cast<int>(problem.activities.size()); ++a) {
    Activity& activity = result.activities[at(a)];
    last = std::max(last, activity.optional ? problem.horizon : bounds.last_end(a));
    if (activity.optional || may_share(activity)) continue;
    activity.starts = within(activity.starts, bounds.earliest(a), bounds.latest(a));
  }
  result.horizon = std::min(problem.horizon, last);
  return result;
}

}  // namespace

bool Exact::light(const Problem& problem, const Bounds& bounds, const Incumbent& incumbent, const Limits& limits) {
  const Bounds better = bounds_of_better(problem, bounds, incumbent);
  std::int64_t steps = 0;
  const auto count = [&](const Point& from) { steps += std::max<Time>(0, better.latest(from.activity) - better.earliest(from.activity)); };
  for (const MinimumLag& lag : problem.minimum_lags) count(lag.from);
  for (const MaximumLag& lag : problem.maximum_lags) count(lag.from);
  return static_cast<double>(steps) < (limits.seconds > 0 ? limits.seconds * light_a_second : heavy);
}

Exact::Exact(const Network& network, const Bounds& bounds, Budget& budget, Incumbent& incumbent)
    : network_(network),
      budget_(budget),
      incumbent_(incumbent),
      random_(budget.limits().seed + 1),
      neighbours_(network, random_),
      problem_(within(network.problem, bounds_of_better(network.problem, bounds, incumbent))),
      search_(problem_) {
  search_.ready_from(incumbent.ready_bound());
}

SearchLimits Exact::limits(long conflicts) const {
  SearchLimits result;
  result.conflicts = conflicts;
  if (budget_.limits().work > 0) result.conflicts = std::max(1L, std::min(conflicts, budget_.limits().work - budget_.work()));
  std::tie(result.seconds, result.clock) = budget_.rest();
  result.stop = budget_.limits().stop;
  return result;
}

void Exact::take(const SearchResult& result) {
  budget_.count(std::max(1L, result.conflicts));
  if (result.schedule) {
    const bool taken = incumbent_.offer(*result.schedule, score(network_.problem, *result.schedule));
    astray_ = astray_ || !taken;
  }
  if (const auto& best = incumbent_.best()) {
    incumbent_.bound(std::min(result.ready_bound, best->score.ready), std::min(result.lateness_bound, best->score.lateness));
  } else {
    incumbent_.bound(result.ready_bound, result.lateness_bound);
  }
}

bool Exact::whole(long conflicts) {
  const auto& best = incumbent_.best();
  if (astray_) return false;
  const SearchResult result =
      search_.improve(best ? std::optional(best->score) : std::nullopt, best ? &best->schedule : nullptr, limits(conflicts));
  take(result);
  if (result.infeasible) infeasible_ = true;
  astray_ = astray_ || (result.conflicts == 0 && !result.schedule && !result.exhausted);  // it found a schedule that cannot be laid out
  if (result.exhausted && incumbent_.best() && !astray_) incumbent_.exhausted();
  return !over();
}

void Exact::in_turn(long conflicts) { take(search_.improve(std::nullopt, nullptr, limits(conflicts), neighbours_.in_turn())); }

bool Exact::parts(int count) {
  bool better = false;
  for (int i = 0; i < count && !over() && !budget_.spent(); ++i) {
    const Found& best = *incumbent_.best();
    const Neighbourhood part = neighbours_.choose(best.schedule, static_cast<int>(size_));
    const Schedule hint = best.schedule;
    const SearchResult result = search_.improve(best.score, &hint, limits(conflicts_of_a_part), part);
    better = better || result.schedule.has_value();
    size_ *= result.exhausted ? 1.05 : 0.97;
    size_ = std::clamp(size_, smallest, std::max<double>(smallest, network_.size));
    take(result);
  }
  return better;
}

}  // namespace coatday::solver
