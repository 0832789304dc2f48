#pragma once
// Justification: every activity as late as the rest of a schedule lets it be. In that order, a pass often finds a shorter one.

#include "solver/base/bounds.h"
#include "solver/heuristic/priority.h"

namespace coatday::solver {

/// By activity, its start when all are moved late, the last first, without moving a goal. Holds, exclusions and shared set-ups are not looked
/// at: these are keys for a pass, no schedule.
[[nodiscard]] Keys justified(const Network&, const Bounds&, const Schedule&);

}  // namespace coatday::solver
