#include "solver/solve.h"

#include <algorithm>

#include "solver/clause_learning/infeasible_core.h"
#include "solver/exact/exact.h"
#include "solver/gather/gather.h"
#include "solver/heuristic/branch_passes.h"
#include "solver/heuristic/keep_starts.h"
#include "solver/heuristic/reinsertion.h"
#include "solver/lower_bounds/contradiction.h"
#include "solver/lower_bounds/lower_bound.h"

namespace coatday::solver {
namespace {

constexpr long first_conflicts = 1000, most_conflicts = 1'000'000'000;
constexpr double most_for_passes = 0.2;  // of the time: on a small problem the search alone is often fast
constexpr long conflicts_a_try = 300;
constexpr int most_parts = 20;               // at a time
constexpr long conflicts_for_a_part = 1000;  // spent on the whole problem before one part is searched
constexpr double a_moment = 1;               // in seconds
constexpr int few = 300;                     // activities; with so few, the thorough bounds take hardly any time

// Explains what a search refuted. Looks for a small set of tags in the rest of the time, or in a moment. Otherwise it names what most often
// kept the passes from a place, or all tags where no pass was made.
Contradiction refuted(const Problem& problem, const Budget& budget, const BranchPasses& passes) {
  const Limits& limits = budget.limits();
  if (!limits.reasons) return {};
  const auto [rest, clock] = budget.rest();
  const double seconds = rest > 0 ? std::max(a_moment, rest) : 0;
  if (problem.activities.size() <= few) {
    const SearchLimits each{conflicts_a_try, seconds, limits.stop, clock};
    if (auto fewer = infeasible_subset(problem, each, seconds)) return {std::move(*fewer), -1};
  }
  const int worst = passes.failure_counts().worst();
  std::vector<Tag> blockers = passes.failure_counts().blockers(worst);
  return {blockers.empty() ? tags_of(problem) : std::move(blockers), worst};
}

// Takes over what the bounds alone prove.
void bound_by(const Problem& problem, const Bounds& bounds, Incumbent& incumbent) {
  Time ready = problem.goals.empty() ? 0 : -unreachable;
  double lateness = 0;
  for (const Goal& goal : problem.goals) {
    if (problem.activities[at(goal.activity)].optional) continue;
    ready = std::max(ready, bounds.earliest(goal.activity));
    lateness += goal.weight * std::max(0.0, static_cast<double>(bounds.earliest(goal.activity)) - goal.due);
  }
  std::vector<Time> from;
  for (const Goal& goal : problem.goals) from.push_back(bounds.earliest(goal.activity));
  incumbent.bound(ready, lateness);
  incumbent.bound_goals(std::move(from));
}

Outcome outcome_of(const Incumbent& incumbent, const BranchPasses& passes, const Budget& budget) {
  if (incumbent.best()) {
    Found best = *incumbent.best();
    best.cut_off = budget.guarded();
    return best;
  }
  const int worst = passes.failure_counts().worst();
  return NotFound{worst, passes.failure_counts().blockers(worst), incumbent.ready_bound()};
}

// In growing turns: the exact search on the whole, on parts of the best schedule, and passes. False: no schedule exists.
bool search_exactly(const Network& network, const Bounds& bounds, Budget& budget, Incumbent& incumbent, BranchPasses& passes) {
  Exact exact(network, bounds, budget, incumbent);
  const bool first = !incumbent.best();
  if (first) exact.in_turn(first_conflicts);
  bool passes_pay = true;
  const auto begun = [&] { return first && incumbent.best(); };
  for (long conflicts = first_conflicts; !budget.spent() && !incumbent.proven() && !begun() && exact.whole(conflicts);
       conflicts = std::min(most_conflicts, conflicts + conflicts / 2)) {
    if (begun()) break;
    const int parts = static_cast<int>(std::clamp(conflicts / conflicts_for_a_part, 1L, static_cast<long>(most_parts)));
    for (bool better = true; better && incumbent.best() && !exact.over() && !budget.spent();) better = exact.parts(parts);
    if (exact.over()) break;
    const std::optional<Score> before = incumbent.best() ? std::optional(incumbent.best()->score) : std::nullopt;
    budget.share(passes_pay ? 0.05 : 0.01, most_for_passes);
    passes.improve();
    passes_pay = incumbent.best() && (!before || incumbent.best()->score < *before);
  }
  // Again, now within the bounds of the first schedule.
  if (begun() && !exact.over()) return search_exactly(network, bounds, budget, incumbent, passes);
  return !exact.infeasible();
}

// Passes, then the exact search if the problem allows it. False: no schedule exists.
bool search(const Network& network, const Bounds& bounds, Budget& budget, Incumbent& incumbent, BranchPasses& passes) {
  const auto exactly = [&] {
    return Search::supports(network.problem) && Exact::light(network.problem, bounds, incumbent, budget.limits());
  };
  budget.share(network.size > few ? 0.3 : 0.01);
  passes.find();
  if (!incumbent.best() && !exactly()) {
    budget.share(1);
    passes.find();
  }
  budget.share(network.size > few ? 0.04 : 0.005);
  passes.improve(network.size > few ? unreachable : budget.limits().passes);  // a small problem is soon proven
  const bool by_turns =
      incumbent.best() && incumbent.best()->score.waits > 0 && incumbent.best()->score.lateness <= incumbent.lateness_bound();
  if (!by_turns && !incumbent.proven() && !budget.spent() && exactly() && !search_exactly(network, bounds, budget, incumbent, passes))
    return false;
  budget.share(1);
  passes.improve();
  return true;
}

// Whole jobs in another turn: what single passes cannot do for many of them.
void reinsert(const Problem& given, const Budget& budget, Incumbent& incumbent) {
  const auto& best = incumbent.best();
  if (budget.limits().reinsertions == 0 || !best || (best->score.lateness <= incumbent.lateness_bound() && best->score.waits <= 0)) return;
  const Problem problem = with_branches(given, taken_branches(given, best->schedule));
  const Network network(problem);
  Bounds bounds(network);
  if (!bounds.propagate()) return;
  Schedule schedule = Reinsertion(network, bounds, budget, best->schedule).run(budget.limits().reinsertions);
  const Score reached = score(given, schedule);
  incumbent.offer(std::move(schedule), reached);
}

// An order that waits its turn could be ready so soon by itself.
Problem with_turns(Problem problem) {
  const Network network(problem);
  Bounds bounds(network);
  if (!bounds.propagate()) return problem;
  for (Goal& goal : problem.goals) {
    if (goal.turn) goal.turn->soonest = bounds.earliest(goal.activity) + goal.turn->younger;
  }
  return problem;
}

bool take_turns(const Problem& problem) {
  return std::any_of(problem.goals.begin(), problem.goals.end(), [](const Goal& goal) { return goal.turn.has_value(); });
}

Outcome solve_freely(const Problem& problem, const Limits& limits) {
  Budget budget(limits);
  const Network network(problem);
  if (auto contradiction = over_capacity(network)) return std::move(*contradiction);
  Bounds bounds(network);
  if (!bounds.propagate()) return explain(network, bounds);
  Incumbent incumbent(network, budget);
  bound_by(problem, bounds, incumbent);
  BranchPasses passes(network, bounds, budget, incumbent);
  if (!budget.extended()) {
    passes.find();
    if (incumbent.best()) passes.improve();
    reinsert(problem, budget, incumbent);
    return outcome_of(incumbent, passes, budget);
  }
  if (network.size > few) {  // first a schedule to show, as the bounds take time
    budget.share(0.1);
    passes.find();
  }
  const bool hurried = limits.seconds > 0 && limits.seconds < 2 && network.size > few;
  const LowerBound lower(network, bounds, hurried ? LowerBound::Effort::quick : LowerBound::Effort::thorough);
  const Time ready = lower.ready();
  if (ready >= unreachable) return refuted(problem, budget, passes);
  bounds = lower.bounds();
  bound_by(problem, bounds, incumbent);
  incumbent.bound(ready, 0);
  if (!search(network, bounds, budget, incumbent, passes)) return refuted(problem, budget, passes);
  reinsert(problem, budget, incumbent);
  return outcome_of(incumbent, passes, budget);
}

}  // namespace

// Kept starts come last, so that they never cost lateness or time.
Outcome solve(const Problem& given, const Limits& limits) {
  const Problem problem = take_turns(given) ? with_turns(given) : given;
  if (!has_kept_starts(problem)) return solve_freely(problem, limits);
  Problem free = problem;
  for (Activity& activity : free.activities) activity.kept.reset();
  Outcome outcome = solve_freely(free, limits);
  if (auto* found = std::get_if<Found>(&outcome)) keep_starts(problem, limits, *found);
  return outcome;
}

void gather_visits(const Problem& problem, const Limits& limits, Found& found) { gather(problem, limits, found); }

Time ready_bound(const Problem& problem) {
  const Network network(problem);
  Bounds bounds(network);
  if (!bounds.propagate()) return unreachable;
  return LowerBound(network, bounds, LowerBound::Effort::quick).ready();
}

}  // namespace coatday::solver
