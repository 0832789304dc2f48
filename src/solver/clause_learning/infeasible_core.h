#pragma once
// Which requirements contradict each other where bounds alone do not tell.

#include <optional>
#include <vector>

#include "solver/clause_learning/search.h"

namespace coatday::solver {

/// Every tag of the problem, once, in order.
[[nodiscard]] std::vector<Tag> tags_of(const Problem&);

/// Tags of a problem that has no schedule, such that those without them can all be left out and it still has none: an activity's calendar, a
/// resource's capacity, a lag, hold or exclusion, an alternative (without which none of its branches need be taken). Made small by leaving out what can be, each try under the limits. None where a schedule
/// exists, the limits do not suffice, or an optional activity ends a hold or belongs to a family. After `seconds` in all (0: none), or when
/// told to stop, what is left stays as it is.
[[nodiscard]] std::optional<std::vector<Tag>> infeasible_subset(const Problem&, const SearchLimits& each, double seconds = 0);

}  // namespace coatday::solver
