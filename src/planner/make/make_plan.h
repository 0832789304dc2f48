#pragma once
// From a job to a plan that nobody has checked yet.

#include "job/plan.h"
#include "job/request.h"

namespace coatday::planner {

/// What a plan is made for: somebody follows it, compares it with others, or only wants to know roughly how good it gets. Only the first has
/// reasons and a bound; the others give up where the quick search finds nothing, and the last makes no other search.
enum class Purpose { follow, compare, glance };

/// Never throws for anything in the job: where there is no plan the status says so. A job with errors from validate() gives an infeasible plan
/// with those findings.
[[nodiscard]] job::Plan make_plan(const job::Job&, const job::Request&, Purpose = Purpose::follow);

}  // namespace coatday::planner
