#pragma once
// From a problem to a schedule.

#include "solver/base/result.h"

namespace coatday::solver {

/// Serial schedule generation with unscheduling, then passes with perturbed priorities that keep the best. Deterministic: the same problem,
/// limits and seed give the same schedule on any machine, unless `seconds` or `stop` cut it off. Where activities have a kept start, more such
/// passes and moves then look for as little lateness and as early a ready time with fewer activities moved.
[[nodiscard]] Outcome solve(const Problem&, const Limits& = {});

/// A proven lower bound on Score::ready: bounds consistency over starts, lags and calendars, then work against capacity. Maximum lags that
/// have a remedy count for nothing. `unreachable` where even that is impossible.
[[nodiscard]] Time ready_bound(const Problem&);

}  // namespace coatday::solver
