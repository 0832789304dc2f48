// What is recorded as done, whole and with gaps: every plan is judged by the checker as well.

#include <gtest/gtest.h>

#include <algorithm>

#include "checker/check.h"
#include "planner/make/make_plan.h"
#include "tests/support/jobs.h"

namespace coatday::planner {
namespace {

using tests::make_job;
using tests::monday;

/// The steps of the top as they would be planned, up to and with its first coat on both sides.
std::vector<job::Event> begun(const job::Job& job) {
  std::vector<job::Event> steps;
  for (const job::Event& event : make_plan(job, {monday()}).events) {
    if (!event.id.starts_with("table-1/top/")) continue;
    steps.push_back(event);
    if (event.id == "table-1/top/clear 1/second") return steps;
  }
  throw std::logic_error("the top is not coated twice");
}

job::Plan planned_after(job::Job job, const std::vector<job::Event>& done) {
  for (const job::Event& event : done) job.order.history.push_back({event.id, event.start, event.end, {"order.yaml", 7, 5}});
  const job::Plan plan = make_plan(job, {done.back().end});
  for (const checker::Breach& breach : checker::check(plan, job)) ADD_FAILURE() << breach.code << ": " << breach.message;
  return plan;
}

TEST(History, AnUnrecordedTurnBeforeARecordedCoatIsNotPlannedAgain) {
  const job::Job job = make_job();
  std::vector<job::Event> steps = begun(job);
  const auto turn = std::find_if(steps.begin(), steps.end(), [](const job::Event& e) { return e.kind == job::EventKind::turn; });
  ASSERT_NE(turn, steps.end());
  const std::string id = turn->id;
  steps.erase(turn);
  const job::Plan plan = planned_after(job, steps);
  EXPECT_EQ(plan.status, job::Status::feasible);
  EXPECT_TRUE(std::none_of(plan.events.begin(), plan.events.end(), [&](const job::Event& e) { return e.id == id; }));
}

TEST(History, ARecordedCoatOverUnrecordedWorkIsRefusedOnceAndByName) {
  const job::Job job = make_job();
  std::vector<job::Event> steps = begun(job);
  ASSERT_EQ(steps.front().id, "table-1/top/sand");
  steps.erase(steps.begin());
  const job::Plan plan = planned_after(job, steps);
  EXPECT_EQ(plan.status, job::Status::infeasible);
  ASSERT_EQ(plan.contradiction.size(), 1U);
  EXPECT_EQ(plan.contradiction[0],
            "the history has table-1/top/clear 1/first, but not what comes before it: table-1/top/sand; record when that was done, too");
  const auto gap = std::find_if(plan.findings.begin(), plan.findings.end(), [](const job::Finding& f) { return f.code == "history-gap"; });
  ASSERT_NE(gap, plan.findings.end());
  EXPECT_EQ(gap->where.line, 7);
}

/// Neither is left out of the plan: a face would be behind without a word.
TEST(History, ASecondSideWithoutItsFirstIsRefused) {
  const job::Job job = make_job();
  std::vector<job::Event> steps = begun(job);
  steps.erase(std::find_if(steps.begin(), steps.end(), [](const job::Event& e) { return e.id == "table-1/top/clear 1/first"; }));
  const job::Plan plan = planned_after(job, steps);
  EXPECT_EQ(plan.status, job::Status::infeasible);
  ASSERT_FALSE(plan.contradiction.empty());
  EXPECT_NE(plan.contradiction[0].find("table-1/top/clear 1/first;"), std::string::npos) << plan.contradiction[0];
}

}  // namespace
}  // namespace coatday::planner
