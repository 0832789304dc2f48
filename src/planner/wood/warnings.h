#pragma once
// What a plan warns of in its wood.

#include "job/wood_findings.h"

namespace coatday::planner {

/// Parts that are not ready, cups beyond their limit, faces left bare on purpose, fixings that are too tight.
/// Quick where the order says nothing of the kind.
[[nodiscard]] std::vector<job::Finding> wood_warnings(const job::Job&, const job::Plan&);

}  // namespace coatday::planner
