#include "solver/heuristic/pass_state.h"

#include <algorithm>

namespace coatday::solver {

PassState::PassState(const Network& all, const Bounds& all_bounds, const PassSettings& how)
    : network(all),
      bounds(all_bounds),
      settings(how),
      partial(all),
      fit(all, partial, lookahead),
      unplaced_predecessors(at(all.size), 0),
      remedy_used(all.problem.maximum_lags.size(), 0),
      firmness(how.firmness) {
  lookahead.generous = how.generous;
  lookahead.wanted = how.wanted;
  lookahead.release.resize(at(all.size));
  for (int a = 0; a < all.size; ++a) lookahead.release[at(a)] = bounds.earliest(a);
  for (const MinimumLag& lag : all.problem.minimum_lags) {
    if (all.precedence(lag)) ++unplaced_predecessors[at(lag.to)];
  }
}

bool PassState::before(int a, int b) const {
  const double one = settings.key[at(a)], other = settings.key[at(b)];
  return one != other ? one < other : network.rank[at(a)] < network.rank[at(b)];
}

Time PassState::lower_bound(int a, bool shared) const {
  Time t = lookahead.release[at(a)];
  for (const int i : network.min_in[a]) {
    const MinimumLag& lag = network.min_lag(i);
    if (partial.placed(lag.from.activity)) t = std::max(t, value_of(lag.bound, partial.point(lag.from)));
  }
  for (const int i : network.max_in[a]) {
    if (!remedy_used[at(i)]) continue;  // a remedy takes part only if the window is missed
    const MaximumLag& lag = network.max_lag(i);
    if (partial.placed(lag.from.activity)) t = std::max(t, value_of(lag.bound, partial.point(lag.from)) + 1);
  }
  const Activity& activity = network.activity(a);
  for (const int i : network.max_out[a]) {
    const MaximumLag& lag = network.max_lag(i);
    if (network.force[at(i)] == Force::none || remedy_used[at(i)] || !partial.placed(lag.to)) continue;
    const Time low = bounds.earliest(a), high = std::max(low, bounds.latest(a));
    const Time reach = latest_of(lag.bound, partial.run(lag.to).start - 1, value_of(activity, lag.from.edge, low, shared),
                                 value_of(activity, lag.from.edge, high, shared));
    t = std::max(t, latest_of(activity, lag.from.edge, shared, reach, low, high) + 1);
  }
  return t;
}

}  // namespace coatday::solver
