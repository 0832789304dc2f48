#include "solver/heuristic/priority.h"

#include <algorithm>
#include <numeric>

#include "solver/base/disjoint_sets.h"

namespace coatday::solver {
namespace {

/// Days within which a goal that waits its turn should be reached, so that the first passes go by age. Judgement, no source.
constexpr Time usual_wait = 14;

// The latest start of lag.from that lets `to` start by `latest`. If none does, as far before the earliest start as the lag would be missed
// by.
double pulled_back(const Network& network, const Bounds& bounds, const MinimumLag& lag, double latest) {
  const int from = lag.from.activity;
  const Activity& activity = network.activity(from);
  const Time low = bounds.earliest(from), high = std::max(low, bounds.latest(from));
  const Time least = value_of(activity, lag.from.edge, low, false);
  const double needed = value_of(lag.bound, least);
  if (needed >= latest) return low - (needed - latest);
  const Time reach = latest_of(lag.bound, static_cast<Time>(latest), least, value_of(activity, lag.from.edge, high, false));
  return std::max(low, latest_of(activity, lag.from.edge, false, reach, low, high));
}

}  // namespace

Keys urgency(const Network& network, const Bounds& bounds) {
  Time all_reached = -unreachable;
  for (const Goal& goal : network.problem.goals) all_reached = std::max(all_reached, bounds.earliest(goal.activity));
  Keys latest(at(network.size));
  for (int a = 0; a < network.size; ++a) latest[at(a)] = bounds.latest(a);
  for (const Goal& goal : network.problem.goals) {
    const Time due = goal.due < unreachable ? goal.due
                     : goal.turn            ? goal.turn->soonest + usual_wait * goal.turn->day
                                            : std::max(all_reached, bounds.earliest(goal.activity));
    latest[at(goal.activity)] = std::min<double>(latest[at(goal.activity)], due);
  }
  for (auto a = network.order.rbegin(); a != network.order.rend(); ++a) {
    for (const int i : network.min_out[*a]) {
      const MinimumLag& lag = network.min_lag(i);
      if (network.precedence(lag)) latest[at(*a)] = std::min(latest[at(*a)], pulled_back(network, bounds, lag, latest[at(lag.to)]));
    }
  }
  return latest;
}

std::vector<int> jobs(const Network& network, const Keys& urgency) {
  DisjointSets sets(network.size);
  const auto movable = [&](int a) {
    const Intervals& starts = network.activity(a).starts;
    return !starts.empty() && starts.back().end - starts.front().begin > 1;
  };
  const auto join = [&](int a, int b) {
    if (movable(a) && movable(b)) sets.join(a, b);  // an activity that cannot move ties nothing together
  };
  for (const MinimumLag& lag : network.problem.minimum_lags) join(lag.from.activity, lag.to);
  for (const MaximumLag& lag : network.problem.maximum_lags) join(lag.from.activity, lag.to);
  for (const Hold& hold : network.problem.holds) {
    for (const int until : hold.until) join(hold.first, until);
  }
  std::vector<int> by_urgency(urgency.size());
  std::iota(by_urgency.begin(), by_urgency.end(), 0);
  std::sort(by_urgency.begin(), by_urgency.end(),
            [&](int a, int b) { return urgency[at(a)] != urgency[at(b)] ? urgency[at(a)] < urgency[at(b)] : a < b; });
  std::vector<int> number(urgency.size(), -1), result(urgency.size());
  int count = 0;
  for (const int a : by_urgency) {
    int& job = number[at(sets.of(a))];
    if (job < 0) job = count++;
    result[at(a)] = job;
  }
  return result;
}

void follow_precedence(const Network& network, Keys& keys) {
  for (auto a = network.order.rbegin(); a != network.order.rend(); ++a) {
    for (const int i : network.min_out[*a]) {
      const MinimumLag& lag = network.min_lag(i);
      if (network.precedence(lag)) keys[at(*a)] = std::min(keys[at(*a)], keys[at(lag.to)]);
    }
  }
}

}  // namespace coatday::solver
