// Planning anew beside an earlier plan: what need not move stays.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "checker/check.h"
#include "tests/planner/planned.h"

namespace coatday::planner {
namespace {

using tests::JobKnobs;
using tests::make_job;
using tests::monday;

job::Starts starts_of(const job::Plan& plan) {
  job::Starts starts;
  for (const job::Event& event : plan.events) starts.emplace(event.id, event.start);
  return starts;
}

job::Plan again(const job::Job& job, const job::Plan& earlier, Instant from = monday()) {
  job::Request request{from};
  request.earlier_starts = starts_of(earlier);
  job::Plan plan = planned(job, request);
  EXPECT_EQ(plan.status, job::Status::planned);
  return plan;
}

const job::Event& event_of(const job::Plan& plan, const std::string& id) {
  return *std::find_if(plan.events.begin(), plan.events.end(), [&](const job::Event& e) { return e.id == id; });
}

TEST(Keep, NothingMovesWhereNothingChanged) {
  for (const bool scuff : {true, false}) {
    JobKnobs knobs;
    knobs.pieces = 3;
    knobs.doors = 4;
    knobs.scuff_step = scuff;
    const job::Job job = make_job(knobs);
    const job::Plan earlier = make_plan(job, {monday()});
    const job::Plan later = again(job, earlier);
    ASSERT_TRUE(later.changes);
    EXPECT_TRUE(later.changes->moved.empty());
    EXPECT_EQ(later.changes->stayed, earlier.events.size());
    EXPECT_EQ(later.changes->added, 0U);
    EXPECT_EQ(later.changes->unknown, 0U);
  }
}

TEST(Keep, ALateCoatMovesOnlyWhatHangsOnIt) {
  JobKnobs knobs;
  knobs.people = 2;
  knobs.pieces = 2;
  knobs.scuff_step = false;  // its dust would move others
  job::Job job = make_job(knobs);
  for (job::OrderPiece& piece : job.order.pieces) piece.promised = monday() + date::days(21);
  const job::Plan earlier = make_plan(job, {monday()});
  const job::Event& coat = event_of(earlier, "table-1/leg.1-4/clear 1");
  const Instant now = coat.end + std::chrono::hours(3);
  for (const job::Event& event : earlier.events) {
    if (event.id == coat.id) {
      job.order.history.push_back({event.id, event.start + std::chrono::hours(3), now, {}});
    } else if (event.start < now) {
      job.order.history.push_back({event.id, event.start, event.end, {}});
    }
  }
  const job::Plan later = again(job, earlier, now);
  ASSERT_TRUE(later.changes);
  EXPECT_GT(later.changes->stayed, 0U);
  const Instant next = event_of(earlier, "table-1/leg.1-4/clear 2").start;
  for (const job::Move& move : later.changes->moved) {
    const job::Event& event = later.events[move.event];
    const bool shared_its_brush = event_of(earlier, event.id).end == next;  // now it has the clean-up
    EXPECT_TRUE(event.id.starts_with("table-1/leg.1-4/") || shared_its_brush) << event.id << " moved";
  }
}

TEST(Keep, UnknownEventsAreCounted) {
  const job::Job job = make_job();
  const job::Plan earlier = make_plan(job, {monday()});
  job::Request request{monday()};
  request.earlier_starts = starts_of(earlier);
  request.earlier_starts->emplace("chair/seat/clear 1", monday());
  request.earlier_starts->erase("table-1/leg.1-4/sand");
  const job::Plan plan = make_plan(job, request);
  ASSERT_TRUE(plan.changes);
  EXPECT_EQ(plan.changes->unknown, 1U);
  EXPECT_EQ(plan.changes->added, 1U);
}

TEST(Keep, NoEarlierPlanNoChanges) { EXPECT_FALSE(make_plan(make_job(), {monday()}).changes); }

LocalDay day_of_instant(const job::Plan& plan, Instant t) { return day_of(plan.shop.zone.to_local(t)); }

/// One that is late on its day counts as a day.
int days_late(const job::Plan& plan) {
  int sum = 0;
  for (const job::PieceResult& piece : plan.pieces) {
    if (!piece.slack || *piece.slack >= Hours(0)) continue;
    const auto days = day_of_instant(plan, *piece.ready.slow.deliver) - day_of_instant(plan, *piece.due);
    sum += std::max(1, static_cast<int>(days.count()));
  }
  return sum;
}

int moved_to_another_half_day(const job::Plan& plan, const job::Starts& earlier) {
  const auto half = [](Instant t) { return std::chrono::floor<std::chrono::hours>(t.time_since_epoch()).count() / 12; };
  return static_cast<int>(std::count_if(plan.events.begin(), plan.events.end(), [&](const job::Event& event) {
    return earlier.contains(event.id) && half(earlier.at(event.id)) != half(event.start);
  }));
}

/// What is kept leaves a delivery free to move; the plan has it as soon as it may be.
TEST(Keep, DeliveryIsToldAsSoonAsItMayBe) {
  JobKnobs knobs;
  knobs.people = 2;
  knobs.points = 1;
  knobs.doors = 2;
  knobs.scuff_step = false;
  const job::Plan earlier = make_plan(make_job(knobs), {monday()});
  knobs.air = {Celsius(24), RelativeHumidity(0.5)};
  knobs.closed = {LocalDay(date::local_days(date::year(2027) / 1 / 13))};
  job::Job job = make_job(knobs);
  for (job::OrderPiece& piece : job.order.pieces) piece.promised = monday() + date::days(4);
  job::Request request{monday()};
  request.earlier_starts = starts_of(earlier);
  const job::Plan kept = make_plan(job, request);
  for (const checker::Breach& breach : checker::check(kept, job)) ADD_FAILURE() << breach.code << ": " << breach.message;
}

RC_GTEST_PROP(KeepLaws, NeverLaterThanWithout, ()) {
  JobKnobs knobs;
  knobs.people = *rc::gen::inRange(1, 3);
  knobs.points = *rc::gen::inRange(1, 4);
  knobs.pieces = *rc::gen::inRange(1, 4);
  knobs.doors = *rc::gen::inRange(0, 6);
  knobs.scuff_step = *rc::gen::arbitrary<bool>();
  const job::Plan earlier = make_plan(make_job(knobs), {monday()});
  knobs.air = {Celsius(*rc::gen::inRange(15, 29)), RelativeHumidity(0.5)};
  knobs.people = *rc::gen::inRange(1, 3);
  knobs.closed = {LocalDay(date::local_days(date::year(2027) / 1 / 11)) + date::days(*rc::gen::inRange(0, 7))};
  job::Job job = make_job(knobs);
  for (job::OrderPiece& piece : job.order.pieces) piece.promised = monday() + date::days(*rc::gen::inRange(3, 12));
  job::Request request{monday()};
  const job::Plan without = make_plan(job, request);
  request.earlier_starts = starts_of(earlier);
  const job::Plan kept = make_plan(job, request);
  RC_ASSERT(kept.status == without.status);
  RC_PRE(kept.status == job::Status::planned);
  RC_ASSERT(checker::check(kept, job).empty());
  RC_ASSERT(days_late(kept) <= days_late(without));
  const LocalDay ready = day_of_instant(kept, *kept.ready), free = day_of_instant(without, *without.ready);
  if (days_late(kept) == days_late(without)) RC_ASSERT(ready <= free);
  RC_PRE(ready == free);
  const int moved = moved_to_another_half_day(kept, starts_of(earlier)),
            else_moved = moved_to_another_half_day(without, starts_of(earlier));
  RC_ASSERT(4 * moved <= 5 * else_moved + 8);  // neither is the least there is
}

}  // namespace
}  // namespace coatday::planner
