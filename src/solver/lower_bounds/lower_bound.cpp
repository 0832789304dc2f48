#include "solver/lower_bounds/lower_bound.h"

#include <algorithm>

#include "solver/base/result.h"

namespace coatday::solver {
namespace {

// Bounds may creep around a cycle of lags for long before they cross. After so much work, nothing counts as refuted.
constexpr long work_each = 2'000'000;
constexpr long all_work = 10'000'000;

constexpr std::size_t most_pairs = 400'000;
constexpr int large = 1500;  // activities; with more, pairs take too long

std::optional<DistanceMatrix> distances(const Network& network, const Bounds& bounds, LowerBound::Effort effort) {
  const int most = effort == LowerBound::Effort::thorough ? 1100 : 120;  // time grows with the cube
  return network.size <= most ? std::optional(DistanceMatrix(network, bounds)) : std::nullopt;
}

}  // namespace

LowerBound::LowerBound(const Network& network, const Bounds& bounds, Effort effort)
    : network_(network),
      bounds_(bounds),
      runs_(shortest_runs(network, bounds)),
      pairs_(network, bounds, runs_, distances(network, bounds, effort), network.size > large ? 0 : most_pairs),
      workload_(network, bounds, runs_, effort == Effort::thorough),
      rounds_(network, bounds, effort == Effort::thorough) {
  for (const Goal& goal : network.problem.goals) {
    if (network.certain(goal.activity)) goals_.push_back(goal.activity);
  }
  for (const std::vector<int>& clique : pairs_.cliques()) workload_.add_clique(bounds, clique);
  impossible_ = !pairs_.tighten(bounds_, work_each) || workload_.too_much(bounds_) || rounds_.too_many(bounds_);
}

bool LowerBound::refuted(Time ready, long& work) const {
  Bounds within = bounds_;
  work -= within.work();
  for (const int goal : goals_) within.start_by(goal, ready);
  const bool result =
      !within.propagate(work_each) || !pairs_.tighten(within, work_each) || workload_.too_much(within) || rounds_.too_many(within);
  work += within.work();
  return result;
}

Time LowerBound::ready() const {
  if (impossible_) return unreachable;
  if (goals_.empty()) return network_.problem.goals.empty() ? 0 : -unreachable;
  Time low = -unreachable, high = -unreachable;
  for (const int goal : goals_) {
    low = std::max(low, bounds_.earliest(goal));
    high = std::max(high, bounds_.latest(goal));
  }
  long work = 0;
  for (Time step = 1; low < high && work < all_work; step *= 2) {  // the result is mostly near the first
    const Time next = std::min<Time>(high - 1, low + step - 1);
    if (!refuted(next, work)) {
      high = next;
      break;
    }
    low = next + 1;
  }
  while (low < high && work < all_work) {
    const Time middle = low + (high - low) / 2;
    if (refuted(middle, work)) {
      low = middle + 1;
    } else {
      high = middle;
    }
  }
  return low;
}

}  // namespace coatday::solver
