#pragma once
// Planning in a test, with the checker's word on the plan.

#include "planner/make/make_plan.h"
#include "tests/support/jobs.h"

namespace coatday::planner {

/// The plan; where there is one, each breach that the checker finds in it is a failure of the test.
[[nodiscard]] job::Plan planned(const job::Job&, const job::Request& = {tests::monday()});

}  // namespace coatday::planner
