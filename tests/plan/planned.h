#pragma once
// Planning in a test, with the checker's word on the plan.

#include "plan/planner.h"
#include "tests/support/jobs.h"

namespace coatday::plan {

/// The plan; where there is one, each breach that the checker finds in it is a failure of the test.
[[nodiscard]] Plan planned(const Job&, const Request& = {tests::monday()});

}  // namespace coatday::plan
