#pragma once
// Planning anew: what need not move stays where it was.

#include "solver/base/result.h"

namespace coatday::solver {

/// Whether any activity has a kept start.
[[nodiscard]] bool has_kept_starts(const Problem&);

/// Betters a sound schedule in Score::moved: passes that place each activity at its kept start where it can be there, then single moves back
/// (settle.h). Never more lateness, never a later ready time. What `found` says of bounds and proof stays true.
void keep_starts(const Problem&, const Limits&, Found& found);

}  // namespace coatday::solver
