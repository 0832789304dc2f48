// Holds that lie on stretches of a resource.

#include "solver/base/layout.h"

#include <gtest/gtest.h>

#include "solver/base/violations.h"
#include "solver/solve.h"
#include "tests/solver/build.h"
#include "tests/solver/exhaustive.h"
#include "tests/solver/random_problem.h"

namespace coatday::solver::test {
namespace {

struct Places : testing::Test {  // three places of ten
  Problem p;
  Places() { p.resources = {{30, -1, 10}}; }
};

TEST_F(Places, TheTightestGap) {
  Layout layout(p);
  layout.lay(0, 0, {0, 100}, {{0}, 0, 6});
  layout.lay(0, 1, {0, 100}, {{2}, 3, 7});
  const auto three = layout.room({0, 3}, {10, 20});
  ASSERT_TRUE(three);
  EXPECT_EQ(three->segments, std::vector<int>{2});
  EXPECT_EQ(three->begin, 0);
  const auto four = layout.room({0, 4}, {10, 20});
  ASSERT_TRUE(four);
  EXPECT_EQ(four->segments, std::vector<int>{0});
  EXPECT_EQ(four->begin, 6);
}

TEST_F(Places, EnoughInAllButNowhereTogether) {
  Layout layout(p);
  for (int s = 0; s < 3; ++s) layout.lay(0, s, {0, 10 + s}, {{s}, 4, 2});
  EXPECT_FALSE(layout.room({0, 5}, {0, 5}));
  EXPECT_EQ(layout.next_end(0, {0, 5}), 10);
  EXPECT_TRUE(layout.room({0, 5}, {10, 15}));
}

TEST_F(Places, WholePlaces) {
  Layout layout(p);
  layout.lay(0, 0, {0, 10}, {{1}, 9, 1});
  const auto two = layout.room({0, 11}, {0, 5});
  ASSERT_TRUE(two);
  EXPECT_EQ(two->segments, (std::vector<int>{0, 2}));
  EXPECT_EQ(two->length, 10);
  EXPECT_FALSE(layout.room({0, 21}, {0, 5}));
  layout.lift(0, 0, {0, 10});
  EXPECT_TRUE(layout.room({0, 21}, {0, 5}));
}

// Against all schedules and all ways of laying them out.
TEST(Layout, SmallProblems) {
  int feasible = 0, missed = 0, proven = 0, laid = 0;
  for (unsigned bits = 0; bits < Features::all; bits += 3) {
    const Problem problem = random_problem(features(bits | Features::all), 77 + bits);
    const Exhausted truth = exhaust(problem);
    feasible += truth.feasible ? 1 : 0;
    Limits thorough;
    thorough.work = 400;
    for (const Limits& limits : {Limits{}, thorough}) {
      const Outcome outcome = solve(problem, limits);
      const auto* found = std::get_if<Found>(&outcome);
      if (found == nullptr) {
        missed += truth.feasible ? 1 : 0;
        EXPECT_FALSE(truth.feasible && std::holds_alternative<Contradiction>(outcome)) << bits;
        continue;
      }
      ASSERT_TRUE(truth.feasible) << bits;
      EXPECT_EQ(violations(problem, found->schedule), std::vector<std::string>{}) << bits;
      EXPECT_GE(found->score, truth.best) << bits;
      for (const Stretch& stretch : found->schedule.hold_stretch) laid += stretch.segments.empty() ? 0 : 1;
      if (!found->proven) continue;
      ++proven;
      EXPECT_EQ(found->score.lateness, truth.best.lateness) << bits;
      EXPECT_EQ(found->score.ready, truth.best.ready) << bits;
    }
  }
  EXPECT_GT(feasible, 100);
  EXPECT_GT(laid, 500);
  EXPECT_GT(proven, 150);
  EXPECT_LE(missed, feasible / 40);
}

}  // namespace
}  // namespace coatday::solver::test
