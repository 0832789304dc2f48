#pragma once
// Looks up allowed starts.

#include "solver/base/problem.h"

namespace coatday::solver {

/// The earliest allowed time >= t, or `unreachable`.
[[nodiscard]] Time next_allowed(const Intervals&, Time t);
/// The latest allowed time <= t, or -unreachable.
[[nodiscard]] Time previous_allowed(const Intervals&, Time t);
/// Sorts and merges intervals that overlap or touch.
[[nodiscard]] Intervals merged(Intervals);

}  // namespace coatday::solver
