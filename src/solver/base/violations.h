#pragma once
// Judges a schedule, apart from all that makes one.

#include <string>
#include <vector>

#include "solver/base/problem.h"

namespace coatday::solver {

/// Every requirement that a schedule breaks, in words that name activities and constraints by number; empty when it is sound.
/// Written apart from solve() and sharing nothing with it but the problem.
[[nodiscard]] std::vector<std::string> violations(const Problem&, const Schedule&);

}  // namespace coatday::solver
