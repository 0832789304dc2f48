#pragma once
// When a plan's coats need most fresh air together.

#include <vector>

#include "job/plan.h"

namespace coatday::job {

struct MostVapour {
  Instant at;                       ///< when the last of them begins
  CubicMetresPerHour airflow;       ///< for all that is wet then
  std::vector<std::size_t> events;  ///< indices into Plan::events
};
/// The first moment of most; nothing where no coat has solvent in it.
[[nodiscard]] std::optional<MostVapour> most_vapour(const Plan&);

}  // namespace coatday::job
