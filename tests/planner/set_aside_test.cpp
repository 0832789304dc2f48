// Room for what stands aside, dry to handle and not yet dry to pack.
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/planner/planned.h"

namespace coatday::planner {
namespace {

job::Job eight_doors() {
  tests::JobKnobs knobs;
  knobs.doors = 8;
  knobs.racks = 4;
  return tests::make_job(knobs);
}

int aside_at(const job::Plan& plan, Instant t) {
  int parts = 0;
  for (const job::PlaceUse& use : plan.places) {
    if (!use.then || t < use.then->from || t >= use.then->until) continue;
    for (const shop::Laid& row : use.laid) parts += row.count;
  }
  return parts;
}

int most_aside(const job::Plan& plan) {
  int most = 0;
  for (const job::PlaceUse& use : plan.places) most = std::max(most, use.then ? aside_at(plan, use.then->from) : 0);
  return most;
}

bool says_full(const job::Plan& plan) {
  return std::any_of(plan.findings.begin(), plan.findings.end(), [](const job::Finding& f) { return f.code == "set-aside-full"; });
}

TEST(SetAside, IsKeptWhereverThereIsAPlan) {
  job::Job job = eight_doors();
  const job::Plan enough = planned(job);
  ASSERT_EQ(enough.status, job::Status::planned);
  EXPECT_GT(most_aside(enough), 4);
  for (const int room : {4, 2, 1, 0}) {
    job.shop.set_aside = room;
    const job::Plan plan = planned(job);
    ASSERT_EQ(plan.status, job::Status::planned) << room;
    EXPECT_LE(most_aside(plan), room);
    EXPECT_FALSE(says_full(plan)) << room;
    EXPECT_GE(*plan.ready, *enough.ready) << room;
  }
}

/// What is recorded as done may stand where there is no room: nobody can change it, and the plan says so.
TEST(SetAside, TellsWhereWhatIsDoneIsTooMuch) {
  job::Job job = eight_doors();
  const job::Plan before = planned(job);
  ASSERT_EQ(before.status, job::Status::planned);
  Instant from = tests::monday();
  while (aside_at(before, from) < 4 && from < before.until) from += std::chrono::hours(24);
  ASSERT_GE(aside_at(before, from), 4);
  for (const job::Event& event : before.events) {
    if (event.end <= from) job.order.history.push_back({event.id, event.start, event.end, {}});
  }
  job.shop.set_aside = 1;
  const job::Plan after = planned(job, {from});
  ASSERT_EQ(after.status, job::Status::planned);
  EXPECT_TRUE(says_full(after));
}

}  // namespace
}  // namespace coatday::planner
