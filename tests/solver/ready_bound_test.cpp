#include <gtest/gtest.h>

#include "solver/solve.h"
#include "tests/solver/build.h"

namespace coatday::solver::test {
namespace {

TEST(ReadyBound, TheLongestChain) {
  Problem p;
  p.horizon = 200;
  const int coat = add(p, {8, 100}, 3), deliver = add(p, {0, 150}, 0);
  p.minimum_lags.push_back({end(coat), deliver, shift(20), -1});
  p.goals.push_back({deliver, unreachable, 1, -1});
  EXPECT_EQ(ready_bound(p), 31);
}

TEST(ReadyBound, WorkAgainstWorkingHours) {
  Problem p;
  p.horizon = 200;
  p.resources = {{1, -1}};
  const int deliver = add(p, {0, 200}, 0);
  p.goals.push_back({deliver, unreachable, 1, -1});
  for (int i = 0; i < 5; ++i) {
    const int work = add(p, {0, 1}, 4, {{0, 1}});
    p.activities.back().starts.clear();
    for (Time day = 0; day < 180; day += 24) p.activities.back().starts.push_back({day + 8, day + 13});  // 8 to 16, so two a day
    p.minimum_lags.push_back({end(work), deliver, nullptr, -1});
  }
  EXPECT_EQ(ready_bound(p), 48 + 8 + 4);
  EXPECT_EQ(std::get<Found>(solve(p)).score.ready, 48 + 8 + 4);
}

TEST(ReadyBound, AWindowWithARemedyCountsForNothing) {
  Problem p;
  p.horizon = 200;
  const int coat = add(p, {0, 100}, 2), recoat = add(p, {60, 150}, 2), scuff = add(p, {0, 150}, 2), other = add(p, {0, 150}, 2);
  p.activities[static_cast<std::size_t>(scuff)].optional = true;
  p.minimum_lags.push_back({end(coat), other, nullptr, -1});
  p.maximum_lags.push_back({end(coat), recoat, shift(10), -1, scuff});
  p.goals.push_back({other, unreachable, 1, -1});
  EXPECT_EQ(ready_bound(p), 2);
  p.maximum_lags[0].remedy.reset();
  EXPECT_EQ(ready_bound(p), 50);
}

TEST(ReadyBound, NeverWhereNothingFits) {
  Problem p;
  p.horizon = 20;
  p.resources = {{1, -1}};
  const int goal = add(p, {0, 20}, 0);
  p.goals.push_back({goal, unreachable, 1, -1});
  for (int i = 0; i < 3; ++i) add(p, {0, 13}, 7, {{0, 1}});
  EXPECT_EQ(ready_bound(p), unreachable);
  p.activities.pop_back();
  EXPECT_EQ(ready_bound(p), 0);
  p.minimum_lags.push_back({start(goal), 1, shift(30), -1});
  EXPECT_EQ(ready_bound(p), unreachable);
}

}  // namespace
}  // namespace coatday::solver::test
