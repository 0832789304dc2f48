// The front door: what comes out of it was checked.
#include "planner/planner.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <type_traits>

#include "planner/finish.h"
#include "planner/make/make_plan.h"
#include "planner/wood/warnings.h"
#include "tests/support/jobs.h"

namespace coatday::planner {
namespace {

using job::AdviceDepth;

static_assert(!std::is_default_constructible_v<FinishedPlan>);
static_assert(!std::is_constructible_v<FinishedPlan, job::Plan>);
static_assert(!std::is_constructible_v<FinishedPlan, job::Plan, job::Advice>);

FinishedPlan finished(const job::Job& job, AdviceDepth advice = AdviceDepth::none) {
  auto result = finish_plan(job, {tests::monday(), advice});
  EXPECT_TRUE(result) << result.error().breaches.front().message;
  return *std::move(result);
}

bool has(const std::vector<job::Finding>& findings, const std::string& code) {
  return std::any_of(findings.begin(), findings.end(), [&](const job::Finding& finding) { return finding.code == code; });
}

/// A plan can be made, and is late by hours.
job::Job late_job() {
  job::Job job = tests::make_job();
  job.order.pieces[0].promised = tests::monday() + std::chrono::hours(1);
  return job;
}

/// It waits a week for warmth; nothing is promised.
job::Job slow_job(double degrees) {
  tests::JobKnobs knobs;
  knobs.air = {Celsius(degrees), RelativeHumidity(0.35)};
  return tests::make_job(knobs);
}

/// No plan can be made: every finish asks for more warmth than the shop has.
job::Job cold_job() {
  job::Job job = slow_job(11);
  for (auto& [id, product] : job.catalogue.products) product.limits.coldest = Celsius(15);
  return job;
}

TEST(FinishPlan, HoldsWhatTheWoodGivesCauseToWarnOf) {
  job::Job job = tests::make_job();
  piece::Part& top = job.order.pieces[0].piece.parts[0];
  top.exceptions = {{"underside", 0, "nobody sees it", {}}};
  const job::Plan bare = make_plan(job, {tests::monday()});
  const std::vector<job::Finding> wood = wood_warnings(job, bare);
  ASSERT_FALSE(wood.empty());
  const FinishedPlan done = finished(job);
  const job::Plan& plan = done.plan();
  EXPECT_EQ(plan.findings.size(), bare.findings.size() + wood.size());
  for (const job::Finding& finding : wood) EXPECT_TRUE(has(plan.findings, finding.code)) << finding.code;
}

TEST(FinishPlan, SaysWhatIsWrongWithAJob) {
  job::Job job = tests::make_job();
  job.order.pieces[0].piece.parts[0].exceptions = {{"underside", 0, "", {}}};
  const FinishedPlan none = finished(job, AdviceDepth::thorough);
  EXPECT_EQ(none.plan().status, job::Status::impossible);
  EXPECT_TRUE(has(none.plan().findings, "both-faces"));
  EXPECT_TRUE(none.plan().proposals.empty());
  EXPECT_FALSE(none.advice().waits_for_air);
  EXPECT_TRUE(wood_findings(job, none).parts.empty());
}

TEST(FinishPlan, AdvisesOnLatenessFromItsDepthOn) {
  const job::Job late = late_job(), impossible = cold_job();
  for (const AdviceDepth depth : {AdviceDepth::none, AdviceDepth::when_impossible, AdviceDepth::when_late, AdviceDepth::quick}) {
    EXPECT_EQ(finished(late, depth).plan().proposals.empty(), depth < AdviceDepth::when_late);
    EXPECT_EQ(finished(impossible, depth).plan().proposals.empty(), depth < AdviceDepth::when_impossible);
  }
  EXPECT_TRUE(finished(tests::make_job(), AdviceDepth::quick).plan().proposals.empty()) << "it is in time";
}

TEST(FinishPlan, AdvisesOnAirFromItsDepthOn) {
  const job::Job slow = slow_job(12);
  EXPECT_FALSE(finished(slow, AdviceDepth::when_late).advice().waits_for_air);
  EXPECT_TRUE(finished(slow, AdviceDepth::quick).advice().waits_for_air);
  EXPECT_TRUE(finished(slow, AdviceDepth::thorough).advice().waits_for_air);
  job::Job late = slow_job(12);
  late.order.pieces[0].promised = tests::monday() + std::chrono::hours(1);
  EXPECT_FALSE(finished(late, AdviceDepth::quick).advice().waits_for_air) << "what is late gets advice on lateness alone";
  EXPECT_TRUE(finished(late, AdviceDepth::thorough).advice().waits_for_air);
}

TEST(FinishPlan, NobodyGetsAPlanThatTheCheckerFindsWrong) {
  const job::Job job = tests::make_job();
  const Finisher wrong([](const job::Job& of, const job::Request& request) {
    job::Plan plan = make_plan(of, request);
    const auto turn =
        std::find_if(plan.events.begin(), plan.events.end(), [](const job::Event& e) { return e.kind == job::EventKind::turn; });
    plan.events.erase(turn);
    plan.places.clear();
    return plan;
  });
  for (const AdviceDepth depth : {AdviceDepth::none, AdviceDepth::quick, AdviceDepth::thorough}) {
    const auto result = wrong.run(job, {tests::monday(), depth});
    ASSERT_FALSE(result);
    const auto& breaches = result.error().breaches;
    EXPECT_TRUE(std::any_of(breaches.begin(), breaches.end(), [](const checker::Breach& b) { return b.code == "not-turned"; }));
  }
}

TEST(FinishPlan, ReasonsAgainstAPlanAreNotChecked) {
  const Finisher none([](const job::Job&, const job::Request& request) {
    job::Plan plan;
    plan.from = request.from;
    plan.status = job::Status::not_found;
    plan.contradiction = {"nothing was found"};
    return plan;
  });
  const auto result = none.run(tests::make_job(), {tests::monday()});
  ASSERT_TRUE(result);
  EXPECT_EQ(result->plan().contradiction, std::vector<std::string>{"nothing was found"});
}

}  // namespace
}  // namespace coatday::planner
