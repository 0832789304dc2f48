#pragma once
// What would help when nothing fits, or when the promise cannot be kept: the smallest change of each kind, else two of them together, found by planning anew.

#include "job/plan.h"
#include "job/request.h"

namespace coatday::planner {

/// Changes under which the whole order is in time, the smallest of each kind, what asks least first (a scuff, warmer nights, warmer or drier air,
/// another drying place, hands for two hours or for good, a day more a week, a later start, a later date); where no single one suffices, pairs;
/// where those do not either, what helps. Every one rests on a plan that the checker found sound. Nothing for a plan that is in time, for one
/// that validate() refuses, or for an order too large to be planned again and again.
[[nodiscard]] std::vector<std::string> advise_when_late(const job::Job&, const job::Request&, const job::Plan&);

}  // namespace coatday::planner
