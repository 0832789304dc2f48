#include "planner/result/bounds.h"

#include <algorithm>

namespace coatday::planner {

void write_bounds(job::Plan& plan, const solver::Found& found, const Grid& grid) {
  plan.proven = found.proven;
  plan.ready_bound_here = plan.ready_bound;
  if (found.ready_bound > -solver::unreachable)
    plan.ready_bound_here = std::max(plan.ready_bound_here.value_or(plan.from), grid.instant(found.ready_bound));
}

std::vector<int> days_late_alone(const job::Plan& plan, const solver::Found& found, const Grid& grid) {
  std::vector<int> alone(plan.pieces.size(), 0);
  for (std::size_t p = 0; p < plan.pieces.size() && !found.goals_from.empty(); ++p) {
    const job::PieceResult& piece = plan.pieces[p];
    const Instant from = grid.instant(found.goals_from.at(2 * p + 1));  // the second goal of each delivery is the safe one
    if (piece.due) alone[p] = job::days_late(plan.shop.zone, *piece.due, from);
  }
  return alone;
}

}  // namespace coatday::planner
