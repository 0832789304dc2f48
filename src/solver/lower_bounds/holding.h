#pragma once
// How long holds last at least, and which holds want the same resources.

#include <vector>

#include "solver/base/bounds.h"

namespace coatday::solver {

/// Resources between which holds may choose. Together the holds take no more than all of them have.
struct Pool {
  std::vector<int> resources;
  int capacity = 0;
  std::vector<int> holds;
};
/// Every resource is in one pool.
[[nodiscard]] std::vector<Pool> pools(const Network&);

/// The least that a hold takes with any choice, and how long it lasts at least over all starts that the bounds allow.
[[nodiscard]] int least_amount(const Hold&);
[[nodiscard]] Time shortest_hold(const Network&, const Bounds&, const Hold&, bool thorough);
/// The soonest end of the hold if its activity starts at `start`. Nondecreasing.
[[nodiscard]] Time soonest_release(const Network&, const Bounds&, const Hold&, Time start);
/// The first start from t on that the calendars allow the activity, shared or not.
[[nodiscard]] Time next_start(const Activity&, Time t);

}  // namespace coatday::solver
