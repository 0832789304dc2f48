#pragma once
// What a finished plan warns of: coats that may blush in their air, pieces that are late.

#include "plan/make/clocks.h"

namespace coatday::plan {

void write_warnings(Plan&, const Clocks&);

}  // namespace coatday::plan
