#pragma once
// How long holds last at least, and which of them are after the same resources.

#include <vector>

#include "solver/base/bounds.h"

namespace coatday::solver {

/// Resources between which holds may choose, together: what they hold is not more than all of them have.
struct Pool {
  std::vector<int> resources;
  int capacity = 0;
  std::vector<int> holds;
};
/// Every resource is in one of them.
[[nodiscard]] std::vector<Pool> pools(const Network&);

/// The least that a hold takes, whatever is chosen; and how long it lasts at least over all starts that the bounds leave.
[[nodiscard]] int least_amount(const Hold&);
[[nodiscard]] Time shortest_hold(const Network&, const Bounds&, const Hold&, bool thorough);
/// The soonest end of the hold when its activity starts at `start`; nondecreasing.
[[nodiscard]] Time soonest_release(const Network&, const Bounds&, const Hold&, Time start);
/// The first start from t on that the calendars allow the activity, shared or not.
[[nodiscard]] Time next_start(const Activity&, Time t);

}  // namespace coatday::solver
