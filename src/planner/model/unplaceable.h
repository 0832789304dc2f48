#pragma once
// Some jobs are hopeless before any search.

#include <optional>

#include "solver/base/problem.h"

namespace coatday::planner {

/// The tag of an activity that fits at no time: neither with its own set-up, nor after others of its family.
[[nodiscard]] std::optional<solver::Tag> unplaceable(const solver::Problem&);

}  // namespace coatday::planner
