#pragma once
// When a piece may be handled, packed, delivered and used.

#include "plan/plan.h"

namespace coatday::plan {

/// From the plan's events. `deliver` and its late side come from the schedule. Findings say why a date is missing.
[[nodiscard]] PieceResult hand_over(Plan&, const Job&, std::size_t piece, Instant deliver, Instant deliver_late);

}  // namespace coatday::plan
