#pragma once
// From a job to a plan that nobody has checked yet.

#include "job/plan.h"
#include "job/request.h"

namespace coatday::planner {

/// Plans the job from an instant. Never throws for anything in the job; a plan that cannot be is a Plan whose status says so. A job with
/// errors from judge() gives an infeasible plan with those findings.
[[nodiscard]] job::Plan make_plan(const job::Job&, const job::Request&);

}  // namespace coatday::planner
