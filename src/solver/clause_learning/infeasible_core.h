#pragma once
// Which requirements contradict each other, where bounds alone do not show it.

#include <optional>
#include <vector>

#include "solver/clause_learning/search.h"

namespace coatday::solver {

/// Every tag of the problem once, sorted.
[[nodiscard]] std::vector<Tag> tags_of(const Problem&);

/// Tags that contradict each other: the problem has no schedule even without every requirement that has another tag. A requirement is an
/// activity's calendar, a resource's capacity, a lag, a hold, an exclusion or an alternative (without it, none of the branches need be
/// taken). Leaves out as many tags as it can, each try under the limits, until `seconds` in all are over (0: no limit) or the caller sets
/// `stop`.
/// Returns nothing if the problem has a schedule, or if the limits run out, or if an optional activity ends a hold or belongs to a family.
[[nodiscard]] std::optional<std::vector<Tag>> infeasible_subset(const Problem&, const SearchLimits& each, double seconds = 0);

}  // namespace coatday::solver
