#pragma once
// What a maker could change about the other work of the shop and its orders.

#include "planner/advice/changes.h"

namespace coatday::planner {

/// Other work for which no shift is long enough rests over breaks and nights.
[[nodiscard]] ChangeSizes pauses(const job::Job&, Instant from);
/// Work after finishing, but no delivery, that begins as soon as the parts can be handled. Empty where none waits for more.
[[nodiscard]] ChangeSizes work_when_handled(const job::Job&);
/// A later day for work that has to be over by an hour, or begins at one; a kind for each such work of an order, then
/// one for all of them.
[[nodiscard]] std::vector<ChangeSizes> later_work(const job::Job&);

}  // namespace coatday::planner
