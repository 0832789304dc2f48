#include "planner/planner.h"

#include "planner/finish.h"
#include "planner/make/make_plan.h"
#include "planner/wood/findings.h"

namespace coatday::planner {

tl::expected<FinishedPlan, Faults> finish_plan(const job::Job& job, const job::Request& request) {
  return Finisher([](const job::Job& of, const job::Request& asked) { return make_plan(of, asked); }).run(job, request);
}

job::WoodFindings wood_findings(const job::Job& job, const FinishedPlan& finished) {
  const bool planned = finished.plan().status == job::Status::planned;
  return planned ? wood_findings(job, finished.plan()) : job::WoodFindings{};
}

}  // namespace coatday::planner
