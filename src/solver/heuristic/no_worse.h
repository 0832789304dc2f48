#pragma once
// What a schedule may give away for lesser aims.

#include "solver/base/bounds.h"

namespace coatday::solver {

/// Bounds of the schedules that are as good as this one. Where days are known, a goal may start until the end of its group's last day, but
/// not after it is due; one that is late, until the end of its own day. Otherwise no later than it is due, or than all goals are reached.
[[nodiscard]] Bounds no_worse(const Network&, const Schedule&);

}  // namespace coatday::solver
