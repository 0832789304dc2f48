#pragma once
// One problem, all that the solver says of it: the quick call, the extended one, the exact search with its verifier and, where the problem is
// very small, the truth.

#include <string>
#include <vector>

#include "solver/base/problem.h"

namespace coatday::solver::test {

/// What does not agree; empty when all is well.
[[nodiscard]] std::vector<std::string> cross_check(const Problem&);

}  // namespace coatday::solver::test
