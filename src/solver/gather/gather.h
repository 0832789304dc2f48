#pragma once
// Gathers the work of a schedule into few visits, without making it worse.

#include "solver/base/result.h"

namespace coatday::solver {

/// Lowers, in this order: activities on another half day than kept, set-ups, visits, lone errands, idle time within visits, and the starts of
/// what is better soon. No goal leaves its day (see no_worse.h). Does nothing where visits do not matter. The search is local: it counts its
/// tries and knows no clock. The bounds in `found` stay true.
void gather(const Problem&, const Limits&, Found& found);

/// The same, before it is judged.
[[nodiscard]] Schedule gathered(const Problem&, const Limits&, const Schedule&);

}  // namespace coatday::solver
