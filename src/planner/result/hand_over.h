#pragma once
// When a piece may be handled, packed, delivered and used.

#include "job/plan.h"

namespace coatday::planner {

/// From the plan's events. Both dates of delivery come from the schedule. Findings say why a date is missing.
[[nodiscard]] job::PieceResult hand_over(job::Plan&, const job::Job&, std::size_t piece, Instant deliver, Instant deliver_late);

}  // namespace coatday::planner
