// Who turns, and how long it takes.
#include "job/turning.h"

#include <gtest/gtest.h>

#include "tests/planner/planned.h"

namespace coatday::planner {
namespace {

piece::Part board(double length, double width, double thickness) {
  piece::Part part;
  part.shape = piece::Board{Metres(length), Metres(width), Metres(thickness)};
  part.species = "oak-white";
  return part;
}

double seconds(const piece::Part& part, const shop::Shop& shop) { return job::turning_time(part, shop).count() * 3600; }

TEST(Turning, FollowsMassAndSize) {
  shop::Shop shop;
  const double slat = seconds(board(0.6, 0.06, 0.011), shop), shelf = seconds(board(0.85, 0.26, 0.02), shop);
  const double door = seconds(board(2, 0.7, 0.02), shop);
  EXPECT_LT(slat, 45);  // 0.3 kg
  EXPECT_GT(shelf, slat);
  EXPECT_GT(door, 2 * 60);
  EXPECT_LT(door, 10 * 60);
  shop.turning = Minutes(5);
  EXPECT_EQ(seconds(board(0.6, 0.06, 0.011), shop), 300) << "what the shop states stays";
}

/// 23 kg: the load constant of the revised NIOSH lifting equation.
TEST(Turning, TakesTwoAboveWhatOneLifts) {
  shop::Shop shop;
  shop.people = 2;
  piece::Part light = board(1, 1, 0.030), heavy = board(1, 1, 0.031);  // 22.9 kg and 23.6 kg of a dense hardwood
  EXPECT_EQ(job::turning_people(light, shop), 1);
  EXPECT_EQ(job::turning_people(heavy, shop), 2);
  EXPECT_LT(seconds(heavy, shop), seconds(light, shop)) << "each holds half of it";
  shop.people = 1;
  EXPECT_EQ(job::turning_people(heavy, shop), 1);
  EXPECT_TRUE(job::too_heavy_for_one(heavy));
  heavy.turning_people = 3;
  EXPECT_EQ(job::turning_people(heavy, shop), 3) << "what the order says stays";
}

TEST(Turning, AHeavyPartIsTurnedByTwoWithACaution) {
  tests::JobKnobs knobs;
  knobs.people = 2;
  job::Job job = tests::make_job(knobs);
  job.shop.turning.reset();
  job.order.pieces[0].piece.parts[0].shape = piece::Board{Metres(1.8), Metres(0.9), Metres(0.03)};
  const job::Plan plan = planned(job);
  ASSERT_EQ(plan.status, job::Status::planned);
  int turns = 0;
  for (const job::Event& event : plan.events) {
    if (event.kind != job::EventKind::turn) continue;
    ++turns;
    EXPECT_EQ(event.people, 2);
    EXPECT_EQ(event.cautions.back(), "heavy");
  }
  EXPECT_GT(turns, 0);
}

}  // namespace
}  // namespace coatday::planner
