#pragma once
// What would help a plan that waits for the shop's air, found by planning anew.

#include "job/advice.h"
#include "job/request.h"

namespace coatday::planner {

/// A plan waits for air where it would be ready half a day sooner in good air at all hours: 23 °C or warmer and 30 to 50 % RH. For such a plan: the
/// single change of each kind (warmer nights, warmer or drier air, another product of the same role, a later start after which it is ready no later
/// and waits less) that makes it ready soonest; of those within an hour the smallest. Of one of a kind only what gains half a day. Every help rests
/// on a plan that the checker found sound. At most forty plans, or as many small ones as take no longer than people wait at once; none for a plan
/// that is none, nor for an order too large for so many.
[[nodiscard]] job::Advice advise_on_air(const job::Job&, const job::Request&, const job::Plan&);

}  // namespace coatday::planner
