#pragma once
// Very small problems without rhyme or reason: whatever problem.h allows, cycles of lags, empty calendars, remedies that nobody needs, holds
// that end before they begin.

#include <functional>

#include "solver/base/problem.h"

namespace coatday::solver::test {

using Draw = std::function<int(int most)>;  ///< a number from 0 to the most

/// Whatever problem.h allows, or all of it but alternatives and resources that are laid out: the draws of earlier finds.
enum class Reach { all, plain };
[[nodiscard]] Problem any_problem(const Draw&, Reach);

/// The most that exhaust() must look at: the product of all activities' possible starts.
[[nodiscard]] double size_of(const Problem&);

}  // namespace coatday::solver::test
