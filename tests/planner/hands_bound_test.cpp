// Lateness that no order of work avoids, against a count by hand over the shop's hours.

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/planner/planned.h"

namespace coatday::planner {
namespace {

using tests::JobKnobs;
using tests::make_job;
using tests::monday;

/// Everything as soon as one person's hours allow, minute by minute from Monday to Friday, 08:00 to 12:00 and 13:00 to 17:00.
Instant over(Minutes work) {
  Instant t = monday();
  while (work > Minutes{0}) {
    const auto minute = std::chrono::floor<Minutes>(t - date::floor<date::days>(t));
    const bool weekday = date::weekday(date::floor<date::days>(t)).iso_encoding() <= 5;
    if (weekday && ((minute >= Minutes{480} && minute < Minutes{720}) || (minute >= Minutes{780} && minute < Minutes{1020})))
      work -= Minutes{1};
    t += Minutes{1};
  }
  return t;
}

int days_late(const job::Plan& plan) {
  int sum = 0;
  for (const job::PieceResult& piece : plan.pieces) sum += job::days_late(plan, piece);
  return sum;
}

/// Many tables, all promised for the day on which one could be ready.
job::Job crowded(int tables) {
  JobKnobs knobs;
  knobs.points = 40;
  job::Job job = make_job(knobs);
  const Instant ready = *planned(job).pieces.front().ready.slow.deliver;
  knobs.pieces = tables;
  job = make_job(knobs);
  for (job::OrderPiece& piece : job.order.pieces) piece.promised = ready;
  return job;
}

TEST(HandsBound, TheLastOfManyIsAsLateAsTheHoursOfHandsSay) {
  const job::Job job = crowded(12);
  const job::Plan plan = planned(job);
  ASSERT_EQ(plan.status, job::Status::planned);
  Minutes work{0};
  for (const job::Event& event : plan.events) {
    if (event.piece) work += std::chrono::floor<Minutes>((event.end - event.start) * event.people) - event.set_up - event.clean_up;
  }
  const int expected = job::days_late(job.shop.zone, *job.order.pieces.front().promised, over(work));
  ASSERT_GT(expected, 0);
  EXPECT_EQ(plan.days_late_bound, expected);
  EXPECT_LE(plan.days_late_bound, days_late(plan));
}

TEST(HandsBound, NothingIsLateThatHasHoursEnough) {
  const job::Plan plan = planned(crowded(1));
  EXPECT_EQ(plan.days_late_bound, 0);
  EXPECT_EQ(days_late(plan), 0);
}

/// What may only start later does not count for what is due before, and has hours of its own.
TEST(HandsBound, WorkOfAnotherMonthDoesNotCount) {
  job::Job job = crowded(2);
  const int before = planned(job).days_late_bound;
  for (int i = 0; i < 6; ++i) {
    job::OrderPiece later = job.order.pieces.front();
    later.piece.id = "later-" + std::to_string(i);
    later.start = monday() + date::days(28);
    later.promised.reset();
    job.order.pieces.push_back(later);
  }
  EXPECT_EQ(planned(job).days_late_bound, before);
}

}  // namespace
}  // namespace coatday::planner
