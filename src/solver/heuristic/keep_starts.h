#pragma once
// Planning again: activities keep their old start unless something forces them to move.

#include "solver/base/result.h"

namespace coatday::solver {

/// Whether any activity has a kept start.
[[nodiscard]] bool has_kept_starts(const Problem&);

/// Lowers Score::moved of a sound schedule. Passes place each activity at its kept start if it can be there; then RestoreStarts moves
/// single ones back. Lateness and ready time never get worse. The bounds and the proof in `found` stay true.
void keep_starts(const Problem&, const Limits&, Found& found);

}  // namespace coatday::solver
