#pragma once
// When a piece may be handled, packed, delivered and used.

#include "job/plan.h"

namespace coatday::planner {

/// One moment, or the delivery's own hours where it is work.
struct Delivered {
  Instant from, until;
};

/// From the plan's events. Both dates of delivery come from the schedule. Findings say why a date is missing.
[[nodiscard]] job::PieceResult hand_over(job::Plan&, const job::Job&, std::size_t piece, Instant expected, Delivered safe);

}  // namespace coatday::planner
