#pragma once
// All schedules of a very small problem, one by one: a second reading of problem.h, as slow as it likes.

#include <optional>

#include "solver/base/score.h"

namespace coatday::solver::test {

struct Exhausted {
  bool feasible = false;
  Score best;            ///< the best of all
  Schedule schedule;     ///< one that is so good
  Time least_ready = 0;  ///< the least ready time of all, whatever its lateness
};

[[nodiscard]] Exhausted exhaust(const Problem&);

}  // namespace coatday::solver::test
