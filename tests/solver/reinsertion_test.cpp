// Whole jobs are taken out of a schedule and put back in another turn: the result keeps every rule and is never worse.

#include "solver/heuristic/reinsertion.h"

#include <gtest/gtest.h>

#include "solver/base/violations.h"
#include "solver/solve.h"
#include "tests/solver/build.h"
#include "tests/solver/random_problem.h"

namespace coatday::solver::test {
namespace {

constexpr long tries = 200;

std::size_t index(int i) { return static_cast<std::size_t>(i); }

Schedule reinserted(const Problem& problem, const Schedule& schedule) {
  const Network network(problem);
  Bounds bounds(network);
  EXPECT_TRUE(bounds.propagate());
  const Limits limits;
  const Budget budget(limits);
  return Reinsertion(network, bounds, budget, schedule).run(tries);
}

/// Steps of two jobs take turns at one machine; each job's second step follows its first.
struct TwoJobs {
  TwoJobs() {
    problem.horizon = 60;
    problem.resources = {{1, -1}};
    for (int job = 0; job < 2; ++job) {
      const int first = add(problem, {0, 50}, 5, {{0, 1}}), second = add(problem, {0, 50}, 5, {{0, 1}});
      problem.minimum_lags.push_back({end(first), second, nullptr, -1});
      steps.insert(steps.end(), {first, second});
      problem.goals.push_back({second});
    }
    schedule.activities = {at(0, 5), at(5, 10), at(10, 15), at(15, 20)};
  }
  Problem problem;
  std::vector<int> steps;
  Schedule schedule;
};

TEST(Reinsertion, LateJobGoesFirst) {
  TwoJobs two;
  two.problem.goals[1].due = 5;  // the start of its last step
  ASSERT_EQ(violations(two.problem, two.schedule), std::vector<std::string>{});
  const Schedule after = reinserted(two.problem, two.schedule);
  EXPECT_EQ(violations(two.problem, after), std::vector<std::string>{});
  EXPECT_LE(after.activities[index(two.steps[3])].start, 5);
}

TEST(Reinsertion, WhatIsInTimeStaysAsItIs) {
  TwoJobs two;
  two.problem.goals[0].due = 5;
  two.problem.goals[1].due = 15;
  const Schedule after = reinserted(two.problem, two.schedule);
  for (std::size_t a = 0; a < after.activities.size(); ++a) EXPECT_EQ(after.activities[a].start, two.schedule.activities[a].start);
}

/// The schedules to begin with were made for other due dates, so that some are late.
TEST(Reinsertion, KeepsEveryRuleAndIsNeverWorse) {
  int tried = 0, better = 0;
  for (unsigned bits = 0; bits < 2 * Features::all; bits += 5) {  // an odd step meets every feature
    Features wanted = features(bits);
    wanted.alternatives = false;
    wanted.dues = true;
    Problem problem = random_problem(wanted, bits, {7, 30});
    const std::vector<Goal> goals = problem.goals;
    for (Goal& goal : problem.goals) goal.due = unreachable;
    const Outcome outcome = solve(problem);
    const auto* found = std::get_if<Found>(&outcome);
    if (found == nullptr) continue;
    problem.goals = goals;
    const Schedule after = reinserted(problem, found->schedule);
    ASSERT_EQ(violations(problem, after), std::vector<std::string>{}) << "features " << bits;
    Score was = score(problem, found->schedule), is = score(problem, after);
    was.setups = is.setups = 0;  // it looks at the goals alone
    EXPECT_LE(is, was) << "features " << bits;
    ++tried;
    better += is.lateness < was.lateness ? 1 : 0;
  }
  EXPECT_GT(tried, 200);
  EXPECT_GT(better, 10);
}

}  // namespace
}  // namespace coatday::solver::test
