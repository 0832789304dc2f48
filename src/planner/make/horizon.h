#pragma once
// How far ahead a plan is looked for, and whether the air was known far enough.

#include "job/plan.h"
#include "planner/tasks/tasks.h"

namespace coatday::planner {

/// A guess, generous for nearly all orders: where it finds no plan, a longer one is tried. From the work of all hands, the time on all places
/// and the longest chain of steps, by the times on the labels.
[[nodiscard]] date::days first_horizon(const job::Job&, const Loads&, const TaskGraph&, Instant from);

/// Nothing is planned beyond the last year whose dates are known.
[[nodiscard]] date::days last_horizon(Instant from);

/// Every coat of the plan has reached all its stages by the slow clocks.
[[nodiscard]] bool cured(const job::Plan&);

}  // namespace coatday::planner
