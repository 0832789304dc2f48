#pragma once
// How often somebody comes to the finishing room for a plan.

#include "job/plan.h"

namespace coatday::planner {

/// Of what is still to be done; see presence.h for what makes one visit.
[[nodiscard]] std::vector<job::Visit> visits_in(const job::Plan&);

}  // namespace coatday::planner
