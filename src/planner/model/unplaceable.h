#pragma once
// What is hopeless before any search.

#include <optional>

#include "solver/base/problem.h"

namespace coatday::planner {

/// The tag of an activity that fits at no time, whatever else is arranged: not with its set-up, and not after others of its family.
[[nodiscard]] std::optional<solver::Tag> unplaceable(const solver::Problem&);

}  // namespace coatday::planner
