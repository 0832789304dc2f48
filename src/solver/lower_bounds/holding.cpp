#include "solver/lower_bounds/holding.h"

#include <algorithm>

#include "solver/base/calendar.h"
#include "solver/base/disjoint_sets.h"
#include "solver/base/distance_matrix.h"

namespace coatday::solver {
namespace {

Time soonest(const Network& network, const Point& point, Time start) {
  const Activity& activity = network.activity(point.activity);
  const Time alone = value_of(activity, point.edge, start, false);
  return may_share(activity) ? std::min(alone, value_of(activity, point.edge, start, true)) : alone;
}

}  // namespace

std::vector<Pool> pools(const Network& network) {
  const int resources = static_cast<int>(network.problem.resources.size());
  DisjointSets sets(resources);
  for (const Hold& hold : network.problem.holds) {
    for (const Demand& choice : hold.choices) sets.join(choice.resource, hold.choices.front().resource);
  }
  std::vector<Pool> all(at(resources));
  const auto pool_of = [&](int resource) -> Pool& { return all[at(sets.of(resource))]; };
  for (int r = 0; r < resources; ++r) {
    pool_of(r).resources.push_back(r);
    pool_of(r).capacity += network.problem.resources[at(r)].capacity;
  }
  for (int h = 0; h < static_cast<int>(network.problem.holds.size()); ++h) {
    if (!network.hold(h).choices.empty()) pool_of(network.hold(h).choices.front().resource).holds.push_back(h);
  }
  all.erase(std::remove_if(all.begin(), all.end(), [](const Pool& pool) { return pool.resources.empty(); }), all.end());
  return all;
}

int least_amount(const Hold& hold) {
  int amount = hold.choices.front().amount;
  for (const Demand& choice : hold.choices) amount = std::min(amount, choice.amount);
  return amount;
}

Time shortest_hold(const Network& network, const Bounds& bounds, const Hold& hold, bool thorough) {
  const int stretches = thorough ? 2048 : 512;
  Time length = 10 * std::max<Time>(1, network.problem.horizon);  // longer than any schedule
  if (hold.limit && hold.limit_from.activity == hold.first) {
    length = std::min(length, least_reach(network, bounds, hold.limit_from, hold.limit, stretches));
  } else if (hold.limit) {
    return 0;
  }
  for (const int until : hold.until) {
    Time apart = bounds.earliest(until) - bounds.latest(hold.first);
    for (const int i : network.min_out[hold.first]) {
      const MinimumLag& lag = network.min_lag(i);
      if (lag.to == until) apart = std::max(apart, least_reach(network, bounds, lag.from, lag.bound, stretches));
    }
    length = std::min(length, apart);
  }
  return std::max<Time>(length, 0);
}

Time soonest_release(const Network& network, const Bounds& bounds, const Hold& hold, Time start) {
  Time release = unreachable;
  if (hold.limit && hold.limit_from.activity == hold.first) {
    release = value_of(hold.limit, soonest(network, hold.limit_from, start));
  } else if (hold.limit) {
    return start;
  }
  for (const int until : hold.until) {
    Time taken = bounds.earliest(until);
    for (const int i : network.min_out[hold.first]) {
      const MinimumLag& lag = network.min_lag(i);
      if (lag.to != until) continue;
      taken = std::max(taken, next_start(network.activity(until), value_of(lag.bound, soonest(network, lag.from, start))));
    }
    release = std::min(release, taken);
  }
  return release;
}

Time next_start(const Activity& activity, Time t) {
  const Time alone = next_allowed(activity.starts, t);
  return may_share(activity) ? std::min(alone, next_allowed(starts_of(activity, true), t)) : alone;
}

}  // namespace coatday::solver
