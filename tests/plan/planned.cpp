#include "tests/plan/planned.h"

#include <gtest/gtest.h>

#include "plan/check.h"

namespace coatday::plan {

Plan planned(const Job& job, const Request& request) {
  Plan plan = make_plan(job, request);
  if (plan.status != Status::feasible) return plan;
  for (const Breach& breach : check(plan, job)) ADD_FAILURE() << breach.code << ": " << breach.message;
  return plan;
}

}  // namespace coatday::plan
