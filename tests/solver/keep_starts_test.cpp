// Solving anew beside an earlier schedule, against all schedules of very small problems.

#include <gtest/gtest.h>

#include "solver/base/violations.h"
#include "solver/solve.h"
#include "tests/solver/build.h"
#include "tests/solver/exhaustive.h"
#include "tests/solver/random_problem.h"

namespace coatday::solver::test {
namespace {

const Found* found_in(const Outcome& outcome) { return std::get_if<Found>(&outcome); }

void keep_as_in(Problem& problem, const Schedule& schedule) {
  for (std::size_t i = 0; i < problem.activities.size(); ++i) {
    if (schedule.activities[i].present) problem.activities[i].kept = schedule.activities[i].start;
  }
}

TEST(KeepStarts, TheSameProblemMovesNothing) {
  int solved = 0;
  for (unsigned bits = 0; bits < 1024; bits += 3) {
    Problem problem = random_problem(features(bits), bits / 5);
    const Outcome first = solve(problem);
    if (found_in(first) == nullptr) continue;
    ++solved;
    keep_as_in(problem, found_in(first)->schedule);
    const Outcome second = solve(problem);
    ASSERT_NE(found_in(second), nullptr);
    EXPECT_EQ(found_in(second)->score.moved, 0) << "features " << bits;
  }
  EXPECT_GT(solved, 200);
}

// The earlier schedule is that of another problem of the same size: much of it no longer fits.
TEST(KeepStarts, NeverCostsLatenessOrTimeAndMovesLittle) {
  int solved = 0, fewest = 0;
  for (unsigned bits = 0; bits < 1024; bits += 3) {
    Problem problem = random_problem(features(bits), bits / 5);
    for (std::size_t i = 0; i < problem.activities.size(); ++i) {
      if ((bits + i) % 4 != 0) problem.activities[i].kept = static_cast<Time>((bits * 7 + i * 5) % 12);
    }
    Problem free = problem;
    for (Activity& activity : free.activities) activity.kept.reset();
    const Outcome without = solve(free);
    const Outcome outcome = solve(problem);
    ASSERT_EQ(found_in(outcome) == nullptr, found_in(without) == nullptr);
    if (found_in(outcome) == nullptr) continue;
    ++solved;
    const Found& kept = *found_in(outcome);
    EXPECT_EQ(violations(problem, kept.schedule), std::vector<std::string>{}) << "features " << bits;
    EXPECT_EQ(kept.score, score(problem, kept.schedule));
    EXPECT_LE(std::pair(kept.score.lateness, kept.score.ready),
              std::pair(found_in(without)->score.lateness, found_in(without)->score.ready));
    EXPECT_LE(kept.score, score(problem, found_in(without)->schedule));
    const Score best = exhaust(problem).best;
    fewest +=
        std::tuple(kept.score.lateness, kept.score.ready, kept.score.moved) <= std::tuple(best.lateness, best.ready, best.moved) ? 1 : 0;
  }
  EXPECT_GT(solved, 200);
  EXPECT_GE(fewest, solved * 8 / 10);
}

TEST(KeepStarts, WhatHasToMoveGivesWay) {
  Problem p;
  p.horizon = 100;
  p.resources = {{1, -1}};
  const int a = add(p, {0, 90}, 10, {{0, 1}});
  const int b = add(p, {0, 90}, 10, {{0, 1}});
  const int c = add(p, {5, 90}, 10, {{0, 1}});  // it was at 0 and cannot be there any more
  p.activities[static_cast<std::size_t>(a)].kept = 10;
  p.activities[static_cast<std::size_t>(b)].kept = 25;
  p.activities[static_cast<std::size_t>(c)].kept = 0;
  const Outcome outcome = solve(p);
  ASSERT_NE(found_in(outcome), nullptr);
  EXPECT_EQ(found_in(outcome)->score.moved, 1);
  EXPECT_EQ(found_in(outcome)->schedule.activities[0].start, 10);
  EXPECT_EQ(found_in(outcome)->schedule.activities[1].start, 25);
  EXPECT_GE(found_in(outcome)->schedule.activities[2].start, 35);
}

}  // namespace
}  // namespace coatday::solver::test
