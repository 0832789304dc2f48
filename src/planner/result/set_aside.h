#pragma once
// What stands aside, dry to handle and not yet dry to pack.

#include <optional>
#include <vector>

#include "planner/model/drying_clocks.h"
#include "planner/result/place_assignment.h"

namespace coatday::planner {

/// By place hold: when the next step begins, or the load is dry to pack by the expected clock.
[[nodiscard]] std::vector<solver::Time> packed_at(const TaskGraph&, const solver::Schedule&, Clocks&, const Grid&);

/// More parts stand aside than there is room for: the most at a time, from the first such moment until the last.
struct Crowd {
  solver::Time from = 0, until = 0;
  int parts = 0;
  int not_packed = 0;  ///< at such a moment, at least so many are coated and not packed, on their places or aside
};
[[nodiscard]] std::optional<Crowd> crowd_aside(const shop::Shop&, const Loads&, const TaskGraph&, const solver::Schedule&,
                                               const std::vector<PlaceAssignment>&, const std::vector<solver::Time>& packed, Clocks&,
                                               const Grid&);
[[nodiscard]] job::Finding set_aside_full(const Crowd&, const shop::Shop&, const Grid&);

}  // namespace coatday::planner
