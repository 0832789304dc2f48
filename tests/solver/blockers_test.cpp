// What is in the way of a sooner start: without it the activity can start sooner. Whether it can is asked of violations(), which shares no code.
#include "solver/blockers.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "solver/base/violations.h"
#include "solver/solve.h"
#include "tests/solver/build.h"
#include "tests/solver/random_problem.h"

namespace coatday::solver::test {
namespace {

using Rule = Blocker::Rule;

TEST(Blockers, AnActivityThatUsesTheSame) {
  Problem p;
  p.horizon = 100;
  p.resources = {{1, 7}};
  const int first = add(p, {0, 90}, 10, {{0, 1}});
  const int second = add(p, {0, 90}, 5, {{0, 1}});
  const Schedule schedule{{at(0, 10), at(10, 15)}, {}, {}};
  Blockers blockers(p, schedule);
  EXPECT_EQ(blockers.released(second), 0);
  EXPECT_EQ(blockers.last_open(second, 9), 9);
  const auto found = blockers.failing(second, 9);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].rule, Rule::demand);
  EXPECT_EQ(found[0].tag, 7);
  EXPECT_EQ(found[0].activities, std::vector{first});
  EXPECT_EQ(found[0].until, 10);
  EXPECT_TRUE(blockers.failing(second, 10).empty());
}

TEST(Blockers, TheHoldThatEndsLastBeforeTheStart) {
  Problem p;
  p.horizon = 100;
  p.resources = {{2, 3}};
  for (int i = 0; i < 3; ++i) {
    const int a = add(p, {0, 90}, 1);
    p.holds.push_back({a, {}, {a, Edge::end}, shift(10 + 5 * i), {{0, 1}}, 3});
  }
  const Schedule schedule{{at(0, 1), at(0, 1), at(11, 12)}, {0, 0, 0}, {{}, {}, {}}};
  ASSERT_TRUE(violations(p, schedule).empty());
  Blockers blockers(p, schedule);
  const auto found = blockers.failing(2, 10);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].rule, Rule::hold);
  EXPECT_EQ(found[0].activities, std::vector{0}) << "the other holds its place until 16, and the start was possible without that";
  EXPECT_EQ(found[0].until, 11);
}

TEST(Blockers, WhatKeepsTheFollowerFromItsLimit) {
  Problem p;
  p.horizon = 100;
  p.resources = {{1, 5}};
  const int first = add(p, {0, 90}, 1);
  const int second = add(p, {0, 90}, 4, {{0, 1}});
  const int busy = add(p, {10, 11}, 20, {{0, 1}});
  p.minimum_lags.push_back({end(first), second, nullptr, 1});
  p.maximum_lags.push_back({end(first), second, shift(9), 2, std::nullopt});
  const Schedule schedule{{at(21, 22), at(30, 34), at(10, 30)}, {}, {}};
  ASSERT_TRUE(violations(p, schedule).empty());
  Blockers blockers(p, schedule);
  EXPECT_TRUE(blockers.failing(first, 20).empty()) << "the follower has until 30";
  EXPECT_EQ(blockers.soonest(first, 0, 20), 20);
  const auto found = blockers.failing(first, 15);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].rule, Rule::limit);
  EXPECT_EQ(found[0].activities, std::vector{second});
  const Follower held = blockers.follower(first, 15, found[0]);
  EXPECT_EQ(held.latest, 25);
  ASSERT_TRUE(held.last_open);
  EXPECT_EQ(*held.last_open, 25);
  ASSERT_EQ(held.blockers.size(), 1U);
  EXPECT_EQ(held.blockers[0].activities, std::vector{busy});
}

/// Where the calendar and the lags allow a start, it breaks something exactly where a blocker is named.
TEST(Blockers, AgreeWithViolationsOnRandomSchedules) {
  int blocked = 0, could = 0;
  for (unsigned bits = 0; bits < 1024; bits += 3) {
    Problem p = random_problem(features(bits), bits / 5);
    if (std::any_of(p.resources.begin(), p.resources.end(), [](const Resource& r) { return r.segment > 0; })) continue;
    const Outcome outcome = solve(p);
    const auto* found = std::get_if<Found>(&outcome);
    if (found == nullptr) continue;
    Blockers blockers(p, found->schedule);
    for (int a = 0; a < static_cast<int>(p.activities.size()); ++a) {
      const Assignment& run = found->schedule.activities[static_cast<std::size_t>(a)];
      const Time last = blockers.last_open(a, run.start - 1);
      if (!run.present || run.shared || p.activities[static_cast<std::size_t>(a)].family >= 0 || last < blockers.released(a)) continue;
      const Function& lasts = p.activities[static_cast<std::size_t>(a)].end;
      Schedule moved = found->schedule;
      moved.activities[static_cast<std::size_t>(a)] = {last, lasts ? lasts->at(last) : last, true, false};
      const bool sound = violations(p, moved).empty();
      const auto named = blockers.failing(a, last);
      if (sound) {
        EXPECT_TRUE(named.empty()) << "features " << bits << ", activity " << a;
      }
      (named.empty() ? could : blocked) += 1;
      for (const Blocker& blocker : named) EXPECT_FALSE(blocker.activities.empty()) << "features " << bits << ", activity " << a;
    }
  }
  EXPECT_GT(blocked, 40);
  EXPECT_GT(could, 0);
}

}  // namespace
}  // namespace coatday::solver::test
