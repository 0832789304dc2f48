#pragma once
// Several orders as one that the planner can take.

#include <vector>

#include "job/job.h"

namespace coatday::input {

/// Keeps the order of the pieces, and their starts, promises and histories. Of several orders each piece gets the name of its order before its
/// own. An id that occurs in two orders gets the name of its order before it; all other ids stay as they are. A history may use both ids.
[[nodiscard]] job::Order join_orders(std::vector<job::Order> orders);

}  // namespace coatday::input
