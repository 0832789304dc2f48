#pragma once
// Justification: moves every activity as late as the rest of a schedule allows. A pass in that order often finds a shorter schedule.

#include "solver/base/bounds.h"
#include "solver/heuristic/priority.h"

namespace coatday::solver {

/// By activity, its start when all move late, the last first, and no goal moves. The result is no schedule but keys for a pass: it ignores
/// holds, exclusions and shared set-ups.
[[nodiscard]] Keys justified(const Network&, const Bounds&, const Schedule&);

}  // namespace coatday::solver
