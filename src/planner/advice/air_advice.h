#pragma once
// What would make a plan ready sooner, found by planning anew.

#include "job/advice.h"
#include "job/request.h"

namespace coatday::planner {

/// Where its orders wait a day or more for a place or for hands it tries more of them, the smallest number first. A plan waits for air where it
/// would be ready a day sooner in good air at all hours: 23 °C or warmer and 30 to 50 % RH. For such a plan it tries warmer nights, warmer or
/// drier air, another product of the same role. Of each kind it gives the change that makes the plan ready soonest; of those within an hour, the
/// smallest; each gains a day. With quick advice it tries only the largest change of air. The checker finds every tried plan sound. It makes at most forty
/// plans, and none where there is no plan or the order is too large.
[[nodiscard]] job::Advice advise_on_air(const job::Job&, const job::Request&, const job::Plan&);

}  // namespace coatday::planner
