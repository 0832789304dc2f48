// Other ways than the usual one: gathering of parts, order of sides.

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/planner/planned.h"

namespace coatday::planner {
namespace {

using tests::JobKnobs;
using tests::make_job;
using tests::monday;

/// With one coat of two on the underside, and slow to dry: the sooner the face has its first, the sooner it may have its second.
job::Job job_with_a_thin_underside() {
  JobKnobs knobs;
  knobs.scuff_step = false;
  job::Job job = make_job(knobs);
  auto& hours = job.catalogue.products.at("clear").rows[0].hours;
  hours[finish::Stage::tack_free] = hours[finish::Stage::handle] = Hours(2);
  hours[finish::Stage::sand] = Hours(6);
  hours[finish::Stage::recoat] = Hours(6 / 1.4);  // 6 h by the slow clock
  for (piece::Part& part : job.order.pieces.front().piece.parts) {
    if (part.id == "top") part.exceptions.push_back({"underside", 1, "lies on a stable core", {}});
  }
  return job;
}

bool shows_first(const job::Plan& plan) {
  return std::any_of(plan.events.begin(), plan.events.end(), [](const job::Event& e) { return e.id.ends_with("/show"); });
}

std::string tried(const job::Plan& plan) {
  for (const job::Finding& finding : plan.findings) {
    if (finding.code == "ways-tried") return finding.message;
  }
  return "";
}

job::Request searching_for(double seconds) {
  job::Request request{monday()};
  request.seconds = seconds;
  return request;
}

TEST(Variants, TheQuickPlanKeepsToTheTradesRule) {
  const job::Plan plan = planned(job_with_a_thin_underside(), {monday()});
  ASSERT_EQ(plan.status, job::Status::planned);
  EXPECT_FALSE(shows_first(plan));
  EXPECT_EQ(tried(plan), "");
}

TEST(Variants, TheSideThatShowsGoesFirstOnlyWhereThatIsEarlier) {
  const job::Job job = job_with_a_thin_underside();
  const job::Plan quick = planned(job, {monday()});
  const job::Plan best = planned(job, searching_for(4));
  ASSERT_TRUE(quick.ready && best.ready);
  EXPECT_TRUE(shows_first(best));
  EXPECT_LT(*best.ready, *quick.ready);
  EXPECT_LE(*best.ready_bound, *best.ready);
  EXPECT_NE(tried(best).find("planned the side that shows first"), std::string::npos) << tried(best);
  const job::Plan even = planned(make_job(), searching_for(4));
  EXPECT_FALSE(shows_first(even));
  EXPECT_NE(tried(even).find("none gains an hour: "), std::string::npos) << tried(even);
}

TEST(Variants, WhatGainsADayIsTakenUnasked) {
  job::Job job = job_with_a_thin_underside();
  auto& hours = job.catalogue.products.at("clear").rows[0].hours;
  hours[finish::Stage::tack_free] = hours[finish::Stage::handle] = Hours(30);
  hours[finish::Stage::sand] = Hours(96);
  hours[finish::Stage::recoat] = Hours(96 / 1.4);
  job.shop.both_faces_within = Hours(24 * 7);
  const job::Plan plan = planned(job, {monday()});
  ASSERT_EQ(plan.status, job::Status::planned) << testing::PrintToString(plan.contradiction);
  EXPECT_TRUE(shows_first(plan));
  EXPECT_NE(tried(plan).find("planned the side that shows first, a day or more"), std::string::npos) << tried(plan);
}

// Turning all of eight doors takes longer than their second side may wait; four at a time follow in time.
TEST(Variants, FewerAtATimeWhereAllTogetherHaveNoPlan) {
  JobKnobs knobs;
  knobs.doors = knobs.racks = 8;
  knobs.both_faces_within = Hours(2.5);
  const job::Plan plan = planned(make_job(knobs), {monday()});
  ASSERT_EQ(plan.status, job::Status::planned) << testing::PrintToString(plan.contradiction);
  EXPECT_NE(tried(plan).find("planned in twice as many batches; there is no plan the usual way"), std::string::npos) << tried(plan);
}

// What is begun goes on the way in which it was begun: a quick plan too.
TEST(Variants, AHistoryDecides) {
  job::Job job = job_with_a_thin_underside();
  const job::Plan before = planned(job, searching_for(4));
  ASSERT_TRUE(shows_first(before));
  for (const job::Event& event : before.events) {
    job.order.history.push_back({event.id, event.start, event.end, {}});
    if (event.id.ends_with("/show")) break;
  }
  const job::Plan after = planned(job, {before.events[job.order.history.size()].start});
  ASSERT_EQ(after.status, job::Status::planned);
  EXPECT_TRUE(std::none_of(after.findings.begin(), after.findings.end(), [](const job::Finding& f) { return f.code == "unknown-event"; }));
  EXPECT_TRUE(std::any_of(after.events.begin(), after.events.end(), [](const job::Event& e) { return e.id.ends_with("/hidden"); }));
}

}  // namespace
}  // namespace coatday::planner
