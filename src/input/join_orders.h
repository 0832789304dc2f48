#pragma once
// Several orders as one that the planner can take.

#include <vector>

#include "job/job.h"

namespace coatday::input {

/// Pieces in the order given, each with its order's name before its own; their starts, promises and histories stay as they are. A piece's id
/// that occurs in two orders gets its order's name before it, in the history as well; all others stay as they are in a plan of their order alone.
/// A single order is left alone.
[[nodiscard]] job::Order join_orders(std::vector<job::Order> orders);

}  // namespace coatday::input
