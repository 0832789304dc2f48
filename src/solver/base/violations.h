#pragma once
// Checks a schedule. Shares no code with the search that makes it.

#include <string>
#include <vector>

#include "solver/base/problem.h"

namespace coatday::solver {

/// Every requirement that the schedule breaks, as text that names activities and constraints by number. Empty for a sound schedule.
[[nodiscard]] std::vector<std::string> violations(const Problem&, const Schedule&);

}  // namespace coatday::solver
