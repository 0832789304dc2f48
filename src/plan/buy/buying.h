#pragma once
// What the plan's events use up.

#include "plan/plan.h"

namespace coatday::plan {

/// Fills in purchase and sundries from the events.
void write_purchase(Plan&, const Job&);

}  // namespace coatday::plan
