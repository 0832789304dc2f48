#pragma once
// A problem as FlatZinc, the input of general-purpose constraint solvers: a third reading of problem.h, time by time and table by table, for
// solvers that share nothing with ours. For short horizons and weights of goals that are multiples of 1/2.

#include <string>

#include "solver/base/problem.h"

namespace coatday::solver::test {

inline constexpr Time ready_range = 10'000;  ///< more than any ready time

/// Makes `objective` small: 2 * lateness * ready_range + ready. At least one goal, or none, must be sure to take part.
[[nodiscard]] std::string flatzinc_of(const Problem&);

}  // namespace coatday::solver::test
