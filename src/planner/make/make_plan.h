#pragma once
// From a job to a plan that nobody has checked yet.

#include "job/plan.h"
#include "job/request.h"

namespace coatday::planner {

/// What a plan is made for: somebody follows it, or only compares it with others. The second has no reasons and no bound, and gives up where the
/// quick search finds nothing.
enum class Purpose { follow, compare };

/// Never throws for anything in the job: where there is no plan the status says so. A job with errors from validate() gives an infeasible plan
/// with those findings.
[[nodiscard]] job::Plan make_plan(const job::Job&, const job::Request&, Purpose = Purpose::follow);

}  // namespace coatday::planner
