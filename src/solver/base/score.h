#pragma once
// How good a schedule is.

#include "solver/base/problem.h"

namespace coatday::solver {

/// Smaller is better, in this order.
struct Score {
  double lateness = 0;  ///< weighted sum over the goals
  double waits = 0;     ///< where several groups wait their turn: weighted sum of the squares of the days that their goals wait
  Time ready = 0;       ///< the last goal's start; 0 without goals
  int moved = 0;        ///< activities that take part and do not start at their kept start
  double total = 0;     ///< the sum of the goals' starts
  int setups = 0;       ///< activities with a family that ran unshared
  auto operator<=>(const Score&) const = default;
};
[[nodiscard]] Score score(const Problem&, const Schedule&);
/// Adds what one goal makes of lateness, waits, ready and total, where `ready` begins at -unreachable.
void add_goal(const Goal&, Time reached, Score&);

}  // namespace coatday::solver
