#pragma once
// What is done was not always done in time. Nobody can undo it, but the maker has to know.

#include "job/plan.h"

namespace coatday::planner {

/// Adds a warning for each recorded step that went on before the coat below was ready for it, or after its limit, and says what that means.
void write_past_limits(job::Plan&);

}  // namespace coatday::planner
