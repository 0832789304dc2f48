#pragma once
// What would help when nothing fits, or when the promise cannot be kept: the smallest single change of each kind, found by planning anew.

#include "plan/planner.h"

namespace coatday::plan {

/// Changes under which the whole order is in time, the smallest of each kind (a later start, warmer nights, drier air,
/// more hands, another drying place, a day more a week, a later date); where none suffices, those that help. Every one rests on a plan that the checker found sound. Nothing
/// for a plan that is in time, for one that judge() refuses, or for an order too large to be planned again and again.
[[nodiscard]] std::vector<std::string> propose(const Job&, const Request&, const Plan&);

}  // namespace coatday::plan
