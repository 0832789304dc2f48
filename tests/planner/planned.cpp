#include "tests/planner/planned.h"

#include <gtest/gtest.h>

#include "checker/check.h"

namespace coatday::planner {

job::Plan planned(const job::Job& job, const job::Request& request) {
  job::Plan plan = make_plan(job, request);
  if (plan.status != job::Status::planned) return plan;
  for (const checker::Breach& breach : checker::check(plan, job)) ADD_FAILURE() << breach.code << ": " << breach.message;
  return plan;
}

}  // namespace coatday::planner
