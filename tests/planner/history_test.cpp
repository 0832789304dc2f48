// What is recorded as done, whole and with gaps: every plan is judged by the checker as well.

#include <gtest/gtest.h>

#include <algorithm>

#include "checker/check.h"
#include "tests/planner/planned.h"

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
  EXPECT_EQ(plan.status, job::Status::planned);
  EXPECT_TRUE(std::none_of(plan.events.begin(), plan.events.end(), [&](const job::Event& e) { return e.id == id; }));
}

TEST(History, ARecordedCoatOverUnrecordedWorkIsRefusedOnceAndByName) {
  const job::Job job = make_job();
  std::vector<job::Event> steps = begun(job);
  ASSERT_EQ(steps.front().id, "table-1/top/sand");
  steps.erase(steps.begin());
  const job::Plan plan = planned_after(job, steps);
  EXPECT_EQ(plan.status, job::Status::impossible);
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
  EXPECT_EQ(plan.status, job::Status::impossible);
  ASSERT_FALSE(plan.contradiction.empty());
  EXPECT_NE(plan.contradiction[0].find("table-1/top/clear 1/first;"), std::string::npos) << plan.contradiction[0];
}

const job::Event* find(const job::Plan& plan, const std::string& id) {
  const auto found = std::find_if(plan.events.begin(), plan.events.end(), [&](const job::Event& e) { return e.id == id; });
  return found == plan.events.end() ? nullptr : &*found;
}

TEST(History, WhatIsDoneStaysDone) {
  const job::Job job = make_job();
  const job::Plan before = planned(job);
  job::Job since = job;
  const job::Event* sand = find(before, "table-1/top/sand");
  ASSERT_TRUE(sand);
  since.order.history = {{sand->id, sand->start, sand->end + std::chrono::hours(1), {}}};
  const Instant now = sand->end + std::chrono::hours(1);
  const job::Plan after = planned(since, {now});
  ASSERT_EQ(after.status, job::Status::planned);
  for (const job::Event& event : after.events) {
    if (event.done) {
      EXPECT_EQ(event.start, sand->start);
    } else {
      EXPECT_GE(event.start, now);
    }
  }
}

// The first side has its coat; the shop then stood still for so long.
job::Job first_side_done(const job::Job& job, std::chrono::hours standing, Instant& now) {
  const job::Plan plan = planned(job);
  job::Job since = job;
  for (const job::Event& event : plan.events) {
    if (event.load != find(plan, "table-1/top/clear 1/first")->load) continue;
    since.order.history.push_back({event.id, event.start, event.end, {}});
    now = event.end + standing;
    if (event.id == "table-1/top/clear 1/first") break;
  }
  return since;
}

TEST(History, AFaceThatCanNoLongerFollowInTimeIsPlannedAndToldOf) {
  Instant now;
  const job::Job job = first_side_done(make_job(), std::chrono::hours(72), now);
  const job::Plan plan = planned(job, {now});
  ASSERT_EQ(plan.status, job::Status::planned);
  const auto missed = [](const job::Finding& f) { return f.code == "limit-missed" && f.subject == "table-1/top/clear 1/second"; };
  EXPECT_EQ(std::count_if(plan.findings.begin(), plan.findings.end(), missed), 1);
  job::Plan silent = plan;
  std::erase_if(silent.findings, missed);
  const std::vector<checker::Breach> breaches = checker::check(silent, job);
  EXPECT_TRUE(std::any_of(breaches.begin(), breaches.end(), [](const checker::Breach& b) { return b.code == "faces-apart"; }));
}

TEST(History, AFaceThatCanStillFollowInTimeDoes) {
  Instant now;
  const job::Job job = first_side_done(make_job(), std::chrono::hours(1), now);
  const job::Plan plan = planned(job, {now});
  ASSERT_EQ(plan.status, job::Status::planned);
  const job::Event* first = find(plan, "table-1/top/clear 1/first");
  const job::Event* second = find(plan, "table-1/top/clear 1/second");
  ASSERT_TRUE(first != nullptr && second != nullptr);
  EXPECT_LE(second->start - first->end, Hours(24));
  EXPECT_TRUE(std::none_of(plan.findings.begin(), plan.findings.end(), [](const job::Finding& f) { return f.code == "limit-missed"; }));
}

}  // namespace
}  // namespace coatday::planner
