#pragma once
// What the search decides, concludes and learns: bounds on integer variables.

#include "solver/base/index.h"
#include "solver/base/monotone_function.h"

namespace coatday::solver::clause_learning {

using Var = int;       ///< a start, an end, or a yes-or-no question (0 or 1)
using BoundVar = int;  ///< 2x: a lower bound of x; 2x + 1: a lower bound of -x, so an upper bound of x

/// The bound variable is at least `value`.
struct Literal {
  BoundVar bound_var = 0;
  Time value = 0;
  bool operator==(const Literal&) const = default;
};

[[nodiscard]] constexpr Literal at_least(Var x, Time v) { return {2 * x, v}; }
[[nodiscard]] constexpr Literal at_most(Var x, Time v) { return {2 * x + 1, -v}; }
[[nodiscard]] constexpr Literal yes(Var x) { return at_least(x, 1); }
[[nodiscard]] constexpr Literal no(Var x) { return at_most(x, 0); }
[[nodiscard]] constexpr Literal operator!(Literal l) { return {l.bound_var ^ 1, 1 - l.value}; }
[[nodiscard]] constexpr Var variable(Literal l) { return l.bound_var >> 1; }

}  // namespace coatday::solver::clause_learning
