#pragma once
// From a problem to a schedule.

#include "solver/base/result.h"

namespace coatday::solver {

/// Finds a schedule, or says why there is none. The same problem, limits and seed give the same schedule on any machine, unless `seconds`
/// or `stop` end the call. Kept starts come last: the schedule keeps as many of them as it can without more lateness or a later ready time.
[[nodiscard]] Outcome solve(const Problem&, const Limits& = {});

/// Gathers the work of a schedule into few visits, as far as that makes it no worse: see gather/gather.h.
void gather_visits(const Problem&, const Limits&, Found&);

/// A proven lower bound on Score::ready, from bounds on starts and from work against capacity. Ignores maximum lags with a remedy.
/// `unreachable` if that proves that no schedule exists.
[[nodiscard]] Time ready_bound(const Problem&);

}  // namespace coatday::solver
