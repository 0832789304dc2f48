// One call with limits: what it proves, reports and stops for.

#include <gtest/gtest.h>

#include <atomic>

#include "solver/base/violations.h"
#include "solver/solve.h"
#include "tests/solver/build.h"
#include "tests/solver/exhaustive.h"
#include "tests/solver/random_problem.h"

namespace coatday::solver::test {
namespace {

Problem crowded(int count) {
  Problem p;
  p.horizon = 60 * count;
  p.resources = {{5, -1}, {4, -1}};
  const int last = add(p, {0, p.horizon + 1}, 0);
  p.goals.push_back({last, unreachable, 1, -1});
  for (int i = 1; i <= count; ++i) {
    const int work = add(p, {0, p.horizon - 50}, 3 + i * 7 % 11, {{0, 1 + i % 4}, {1, 1 + i * 5 % 3}});
    p.minimum_lags.push_back({end(work), last, nullptr, -1});
    if (i % 3 != 0 && i > 3) p.minimum_lags.push_back({end(work - 3), work, shift(i % 5), -1});
    if (i % 4 == 0) p.maximum_lags.push_back({start(work - 3), work, shift(60), -1, std::nullopt});
  }
  return p;
}

TEST(Limits, SmallProblemsAreSolvedAndProven) {
  int proven = 0, refuted = 0;
  for (unsigned bits = 0; bits < Features::all; ++bits) {
    const Problem problem = random_problem(features(bits), 50 + bits);
    const std::string name = "features " + std::to_string(bits);
    const Exhausted truth = exhaust(problem);
    Limits limits;
    limits.work = 3000;
    const Outcome outcome = solve(problem, limits);
    if (!truth.feasible) {
      EXPECT_FALSE(std::holds_alternative<Found>(outcome)) << name;
      refuted += std::holds_alternative<Contradiction>(outcome) ? 1 : 0;
      continue;
    }
    ASSERT_TRUE(std::holds_alternative<Found>(outcome)) << name;
    const Found& found = std::get<Found>(outcome);
    EXPECT_EQ(violations(problem, found.schedule), std::vector<std::string>{}) << name;
    EXPECT_LE(found.ready_bound, truth.least_ready) << name;
    EXPECT_GE(found.score, truth.best) << name;
    if (!found.proven) continue;
    ++proven;
    EXPECT_EQ(found.score.lateness, truth.best.lateness) << name;
    EXPECT_EQ(found.score.ready, truth.best.ready) << name;
  }
  RecordProperty("proven", proven);
  RecordProperty("refuted", refuted);
  EXPECT_GT(proven, 800);
  EXPECT_GT(refuted, 40);
}

TEST(Limits, TheQuickCallProvesWhatCostsNothing) {
  Problem p;
  p.horizon = 100;
  const int one = add(p, {8, 90}, 3), other = add(p, {0, 90}, 3);
  p.minimum_lags.push_back({end(one), other, shift(5), -1});
  p.goals = {{other, 12, 2, -1}};
  const Found found = std::get<Found>(solve(p));
  EXPECT_EQ(found.ready_bound, 16);
  EXPECT_EQ(found.score.lateness, 8);
  EXPECT_TRUE(found.proven);
}

TEST(Limits, ByWorkTheResultIsTheSameEveryTime) {
  const Problem p = crowded(24);
  Limits limits;
  limits.work = 1500;
  const Found one = std::get<Found>(solve(p, limits)), again = std::get<Found>(solve(p, limits));
  EXPECT_EQ(one.score, again.score);
  EXPECT_EQ(one.ready_bound, again.ready_bound);
  for (std::size_t a = 0; a < p.activities.size(); ++a) EXPECT_EQ(one.schedule.activities[a].start, again.schedule.activities[a].start);
}

TEST(Limits, ProgressOnlyGetsBetter) {
  Limits limits;
  limits.work = 4000;
  std::vector<Progress> reports;
  limits.progress = [&](const Progress& progress) { reports.push_back(progress); };
  const Found found = std::get<Found>(solve(crowded(30), limits));
  ASSERT_FALSE(reports.empty());
  for (std::size_t i = 1; i < reports.size(); ++i) {
    EXPECT_LE(reports[i].best, reports[i - 1].best);
    EXPECT_GE(reports[i].ready_bound, reports[i - 1].ready_bound);
    EXPECT_GE(reports[i].seconds, reports[i - 1].seconds);
  }
  EXPECT_EQ(reports.back().best, found.score);
  EXPECT_EQ(reports.back().ready_bound, found.ready_bound);
  EXPECT_EQ(reports.back().proven, found.proven);
}

TEST(Limits, SecondsAreKept) {
  Limits limits;
  limits.seconds = 0.3;
  double last = 0;
  limits.progress = [&](const Progress& progress) { last = progress.seconds; };
  EXPECT_TRUE(std::holds_alternative<Found>(solve(crowded(200), limits)));
  EXPECT_LT(last, 30);  // the machine may be slow, but not so slow
}

TEST(Limits, WhatTheFirstPassesFindComesHoweverShortTheTime) {
  Limits limits;
  limits.seconds = 1e-9;
  EXPECT_TRUE(std::holds_alternative<Found>(solve(crowded(400), limits)));
}

TEST(Limits, TheGuardCutsOffAndSaysSo) {
  Limits limits;
  limits.work = 1'000'000;
  limits.guard = 1e-9;
  const Outcome cut = solve(crowded(120), limits);
  ASSERT_TRUE(std::holds_alternative<Found>(cut));
  EXPECT_TRUE(std::get<Found>(cut).cut_off);
  limits.guard = 3600;
  limits.work = 20;
  const Outcome whole = solve(crowded(120), limits);
  ASSERT_TRUE(std::holds_alternative<Found>(whole));
  EXPECT_FALSE(std::get<Found>(whole).cut_off);
}

TEST(Limits, ItStopsWhenTold) {
  std::atomic<bool> stop = false;
  Limits limits;
  limits.seconds = 3600;
  limits.stop = &stop;
  limits.progress = [&](const Progress&) { stop = true; };
  EXPECT_TRUE(std::holds_alternative<Found>(solve(crowded(120), limits)));
}

}  // namespace
}  // namespace coatday::solver::test
