#pragma once
// What an order's history says that cannot be so. It is told as a mistake of the file, before anything is planned.

#include <vector>

#include "job/job.h"
#include "job/plan.h"

namespace coatday::planner {

/// An event that no step of the order has, one that is recorded twice, and one that begins before the event that it follows has ended.
/// Each finding stands at its entry in the file.
[[nodiscard]] std::vector<job::Finding> history_mistakes(const job::Job&);

}  // namespace coatday::planner
