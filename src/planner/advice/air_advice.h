#pragma once
// What would help a plan that waits for the shop's air, found by planning anew.

#include "job/advice.h"
#include "job/request.h"

namespace coatday::planner {

/// A plan waits for air where it would be ready half a day sooner in good air at all hours: 23 °C or warmer and 30 to 50 % RH. For such a plan it
/// tries single changes: warmer nights, warmer or drier air, another product of the same role, a later start after which it is ready no later and
/// waits less. Of each kind it gives the change that makes the plan ready soonest; of those within an hour, the smallest. With quick advice it
/// tries only the largest of a kind, and gives it where it gains half a day. The checker finds every tried plan sound. It makes at most forty
/// plans, and none where there is no plan or the order is too large.
[[nodiscard]] job::Advice advise_on_air(const job::Job&, const job::Request&, const job::Plan&);

}  // namespace coatday::planner
