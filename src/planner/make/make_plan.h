#pragma once
// From a job to a plan that nobody has checked yet.

#include "job/plan.h"
#include "job/request.h"

namespace coatday::planner {

/// What a plan is made for: to be followed; or to be compared with others, and then without reasons, without a bound, and without a longer
/// search where the quick one finds nothing.
enum class Purpose { follow, compare };

/// Plans the job from an instant. Never throws for anything in the job; a plan that cannot be is a Plan whose status says so. A job with
/// errors from validate() gives an infeasible plan with those findings.
[[nodiscard]] job::Plan make_plan(const job::Job&, const job::Request&, Purpose = Purpose::follow);

}  // namespace coatday::planner
