// Lower bounds: by hand where each rule shows, and against all schedules of small problems.

#include "solver/lower_bounds/lower_bound.h"

#include <gtest/gtest.h>

#include "solver/solve.h"
#include "tests/solver/build.h"
#include "tests/solver/exhaustive.h"
#include "tests/solver/random_problem.h"

namespace coatday::solver::test {
namespace {

Time bound_of(const Problem& p, LowerBound::Effort effort = LowerBound::Effort::thorough) {
  const Network network(p);
  Bounds bounds(network);
  return bounds.propagate() ? LowerBound(network, bounds, effort).ready() : unreachable;
}

Problem waiting_for(const std::vector<Time>& lengths, std::vector<Demand> demands, int capacity) {
  Problem p;
  p.horizon = 200;
  p.resources = {{capacity, -1}, {1, -1}};
  const int deliver = add(p, {0, 200}, 0);
  p.goals.push_back({deliver, unreachable, 1, -1});
  for (const Time length : lengths) {
    const int work = add(p, {0, 150}, length, demands);
    p.minimum_lags.push_back({end(work), deliver, nullptr, -1});
  }
  return p;
}

TEST(LowerBound, ThreeThatEachNeedMoreThanHalfGoOneAfterTheOther) {
  EXPECT_EQ(bound_of(waiting_for({4, 5, 6}, {{0, 3}}, 5)), 15);  // work alone: 9
}

TEST(LowerBound, ACliqueRunsOverResourcesAndLags) {
  Problem p = waiting_for({4, 5, 6}, {}, 5);
  p.activities[1].demands = {{0, 3}};
  p.activities[2].demands = {{0, 3}, {1, 1}};
  p.activities[3].demands = {{1, 1}};
  EXPECT_EQ(bound_of(p), 11);
  p.minimum_lags.push_back({end(1), 3, nullptr, -1});
  EXPECT_EQ(bound_of(p), 15);
}

TEST(LowerBound, LagsDecideAnOrder) {
  Problem p = waiting_for({4, 6}, {{1, 1}}, 5);
  p.maximum_lags.push_back({start(1), 2, shift(3), -1, std::nullopt});  // too soon after the start of 1 to come second
  p.minimum_lags.push_back({start(2), 1, shift(0), -1});
  EXPECT_EQ(bound_of(p), 10);
  p.maximum_lags.push_back({start(2), 1, shift(5), -1, std::nullopt});
  EXPECT_EQ(bound_of(p), unreachable);
}

TEST(LowerBound, DryingPlacesAreHeld) {
  Problem p;
  p.horizon = 200;
  p.resources = {{1, -1}, {1, -1}};
  for (int piece = 0; piece < 6; ++piece) {
    const int coat = add(p, {0, 150}, 1), away = add(p, {0, 180}, 1);
    p.minimum_lags.push_back({end(coat), away, shift(9), -1});
    p.holds.push_back({coat, {away}, end(coat), nullptr, {{0, 1}, {1, 1}}, -1});
    p.goals.push_back({away, unreachable, 1, -1});
  }
  EXPECT_EQ(bound_of(p), 30);  // three after each other on each of two places, 10 each
  EXPECT_EQ(ready_bound(p), 30);
  EXPECT_EQ(std::get<Found>(solve(p)).score.ready, 30);
}

// A day of 24 steps, work from 8 to 16, and each hold lasts for 30: begun at 8, over at 14 of the next day; begun then, over in the evening of
// the day after, and nothing follows before the morning.
TEST(LowerBound, NothingTakesAPlaceAtNight) {
  Problem p;
  p.horizon = 400;
  p.resources = {{2, -1}};
  for (int piece = 0; piece < 8; ++piece) {
    const int coat = add(p, {0, 1}, 1);
    p.activities.back().starts.clear();
    for (Time day = 0; day < 350; day += 24) p.activities.back().starts.push_back({day + 8, day + 16});
    const int deliver = add(p, {0, 400}, 0);
    p.minimum_lags.push_back({end(coat), deliver, nullptr, -1});
    p.holds.push_back({coat, {}, end(coat), shift(29), {{0, 1}}, -1});
    p.goals.push_back({deliver, unreachable, 1, -1});
  }
  EXPECT_EQ(bound_of(p), 4 * 24 + 14 + 1);  // four after each other, from 8 on day 0, 14 on day 1, 8 on day 3; by hours alone 8 + 90 + 1
  EXPECT_EQ(std::get<Found>(solve(p)).score.ready, bound_of(p));
}

TEST(LowerBound, DustAndFilmExclude) {
  Problem p = waiting_for({4, 7}, {}, 5);
  p.exclusions.push_back({{{1, 2, nullptr}}, {{2, 0, nullptr}}, -1});
  EXPECT_EQ(bound_of(p), 11);
}

TEST(LowerBound, WorkThatReachesIntoAStretchCounts) {
  Problem p = waiting_for({10, 10, 10}, {{0, 2}}, 5);  // two at a time
  for (std::size_t i = 1; i < 4; ++i) p.activities[i].starts = {{0, 5}};
  EXPECT_EQ(bound_of(p), unreachable);
}

TEST(LowerBound, FewerStretchesOnlyReachFurtherOut) {
  Problem p;
  p.horizon = 9000;
  const int coat = add(p, {100, 5000}, 4);
  std::vector<Time> dry;
  for (Time t = 0; t <= p.horizon; ++t) dry.push_back(t + 30 + (t / 700 % 3) * (700 - t % 700) / 10);
  for (std::size_t t = 1; t < dry.size(); ++t) dry[t] = std::max(dry[t], dry[t - 1]);
  const Function bound = table(0, std::move(dry));
  const Network network(p);
  Bounds bounds(network);
  ASSERT_TRUE(bounds.propagate());
  const Time least = least_reach(network, bounds, end(coat), bound, unreachable),
             most = greatest_reach(network, bounds, end(coat), bound, unreachable);
  EXPECT_EQ(least, 34);  // 30 after the end
  EXPECT_GT(most, 100);
  for (const int stretches : {1, 7, 100, 2000}) {
    EXPECT_LE(least_reach(network, bounds, end(coat), bound, stretches), least) << stretches;
    EXPECT_GE(greatest_reach(network, bounds, end(coat), bound, stretches), most) << stretches;
  }
  EXPECT_GE(least_reach(network, bounds, end(coat), bound, 1000), least - 4);
}

struct Tally {
  int feasible = 0, tight = 0, infeasible = 0, refuted = 0;
};

void expect_sound(const Problem& problem, const std::string& name, LowerBound::Effort effort, const Exhausted& truth, Tally& tally) {
  const Network network(problem);
  Bounds bounds(network);
  const bool consistent = bounds.propagate();
  if (!truth.feasible) {
    ++tally.infeasible;
    tally.refuted += !consistent || LowerBound(network, bounds, effort).ready() >= unreachable ? 1 : 0;
    return;
  }
  ASSERT_TRUE(consistent) << name;
  const LowerBound lower(network, bounds, effort);
  ASSERT_LE(lower.ready(), truth.least_ready) << name;
  ++tally.feasible;
  tally.tight += lower.ready() == truth.least_ready ? 1 : 0;
  for (int a = 0; a < network.size; ++a) {
    const Assignment& run = truth.schedule.activities[static_cast<std::size_t>(a)];
    if (!run.present || problem.activities[static_cast<std::size_t>(a)].optional) continue;
    ASSERT_GE(run.start, lower.bounds().earliest(a)) << name << ", activity " << a;
    ASSERT_LE(run.start, lower.bounds().latest(a)) << name << ", activity " << a;
  }
}

TEST(LowerBound, NeverAboveTheBestOfAllSchedules) {
  Tally quick, thorough;
  constexpr unsigned resources = 1U << 5U;  // where there is most to infer
  for (unsigned bits = 0; bits < Features::all; ++bits) {
    for (std::uint64_t seed = 0; seed < 3; ++seed) {
      const unsigned on = seed == 0 ? bits : bits | resources;
      const Problem problem = random_problem(features(on), 1000 + bits + 7919 * seed);
      const std::string name = "features " + std::to_string(on) + ", seed " + std::to_string(1000 + bits + 7919 * seed);
      const Exhausted truth = exhaust(problem);
      expect_sound(problem, name, LowerBound::Effort::quick, truth, quick);
      expect_sound(problem, name, LowerBound::Effort::thorough, truth, thorough);
    }
  }
  RecordProperty("feasible", thorough.feasible);
  RecordProperty("tight", thorough.tight);
  RecordProperty("infeasible", thorough.infeasible);
  RecordProperty("refuted", thorough.refuted);
  EXPECT_GT(thorough.feasible, 2000);
  EXPECT_GT(thorough.tight, thorough.feasible * 3 / 4);
  EXPECT_GT(thorough.refuted, thorough.infeasible / 4);
}

}  // namespace
}  // namespace coatday::solver::test
