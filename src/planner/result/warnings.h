#pragma once
// What a finished plan warns of: coats that may blush in their air, pieces that are late.

#include "planner/model/drying_clocks.h"

namespace coatday::planner {

void write_warnings(job::Plan&, const Clocks&);

}  // namespace coatday::planner
