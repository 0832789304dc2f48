// Pieces of several orders: none starts before its own start, and importance counts.

#include <gtest/gtest.h>

#include <algorithm>

#include "checker/check.h"
#include "tests/planner/planned.h"

namespace coatday::planner {
namespace {

using tests::JobKnobs;
using tests::make_job;
using tests::monday;

job::Job two_pieces() {
  JobKnobs knobs;
  knobs.pieces = 2;
  return make_job(knobs);
}

TEST(Orders, NothingOfAPieceBeforeItsOrderStarts) {
  job::Job job = two_pieces();
  const Instant thursday = monday() + date::days(3);
  job.order.pieces[1].start = thursday;
  const job::Plan plan = planned(job);
  ASSERT_EQ(plan.status, job::Status::planned);
  std::string why;
  for (const job::Event& event : plan.events) {
    if (event.piece != 1U) continue;
    EXPECT_GE(event.start, thursday) << event.id;
    if (why.empty()) why = event.why;
  }
  EXPECT_NE(why.find("not before Thu 14 Jan 08:00"), std::string::npos) << why;
}

TEST(Orders, TheCheckerSeesAStepBeforeItsOrder) {
  job::Job job = two_pieces();
  const job::Plan plan = make_plan(job, {monday()});
  job.order.pieces[1].start = monday() + date::days(3);
  const std::vector<checker::Breach> breaches = checker::check(plan, job);
  EXPECT_TRUE(std::any_of(breaches.begin(), breaches.end(), [](const checker::Breach& b) { return b.code == "before-order-start"; }));
}

TEST(Orders, WhatCountsMoreIsLessLate) {
  for (const std::size_t important : {std::size_t{0}, std::size_t{1}}) {
    job::Job job = two_pieces();
    for (job::OrderPiece& piece : job.order.pieces) piece.promised = monday() + date::days(1);
    job.order.pieces[important].importance = 20;
    const job::Plan plan = make_plan(job, {monday()});
    ASSERT_EQ(plan.status, job::Status::planned);
    ASSERT_TRUE(plan.pieces[0].slack && plan.pieces[1].slack);
    EXPECT_GE(*plan.pieces[important].slack, *plan.pieces[1 - important].slack);
  }
}

TEST(Orders, ResultsNameTheirOrder) {
  job::Job job = two_pieces();
  job.order.pieces[1].order = "Mill Road";
  const job::Plan plan = make_plan(job, {monday()});
  EXPECT_EQ(plan.pieces[0].order, "");
  EXPECT_EQ(plan.pieces[1].order, "Mill Road");
}

}  // namespace
}  // namespace coatday::planner
