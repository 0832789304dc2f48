// The solver against all schedules of very small problems.

#include "tests/solver/exhaustive.h"

#include <gtest/gtest.h>

#include "solver/base/violations.h"
#include "solver/solve.h"
#include "tests/solver/random_problem.h"

namespace coatday::solver::test {
namespace {

struct Tally {
  int feasible = 0, missed = 0, best = 0, infeasible = 0, proven = 0;
  double gap = 0;  // of the ready times, in steps
};

void compare(const Problem& problem, const std::string& name, Tally& tally) {
  const Exhausted truth = exhaust(problem);
  const Outcome outcome = solve(problem);
  ++(truth.feasible ? tally.feasible : tally.infeasible);
  if (const auto* found = std::get_if<Found>(&outcome)) {
    EXPECT_TRUE(truth.feasible) << name << ": a schedule where there is none";
    EXPECT_EQ(violations(problem, found->schedule), std::vector<std::string>{}) << name;
    EXPECT_EQ(found->score, score(problem, found->schedule)) << name;
    EXPECT_GE(found->score, truth.best) << name << ": better than the best of all";
    tally.best += found->score <= truth.best ? 1 : 0;
    tally.gap += found->score.ready - truth.best.ready;
  } else if (std::holds_alternative<Contradiction>(outcome)) {
    EXPECT_FALSE(truth.feasible) << name << ": a contradiction where there is a schedule";
    ++tally.proven;
  } else {
    tally.missed += truth.feasible ? 1 : 0;
  }
  const Time bound = ready_bound(problem);
  if (truth.feasible) {
    EXPECT_LE(bound, truth.least_ready) << name;
  }
}

TEST(Exhaustive, SmallProblems) {
  Tally tally;
  for (unsigned bits = 0; bits < Features::all; ++bits) {
    const std::uint64_t seed = bits / 7;
    compare(random_problem(features(bits), seed), "features " + std::to_string(bits) + ", seed " + std::to_string(seed), tally);
  }
  RecordProperty("feasible", tally.feasible);
  RecordProperty("missed", tally.missed);
  RecordProperty("best", tally.best);
  RecordProperty("proven", tally.proven);
  EXPECT_GT(tally.feasible, 700);
  EXPECT_GT(tally.proven, 50);
  EXPECT_LE(tally.missed, tally.feasible / 50);
  EXPECT_GE(tally.best, tally.feasible * 7 / 8);
  EXPECT_LE(tally.gap, 0.1 * tally.feasible);
}

}  // namespace
}  // namespace coatday::solver::test
