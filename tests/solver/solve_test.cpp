// One small problem a feature, with the answer worked out by hand.

#include "solver/solve.h"
#include "solver/base/violations.h"

#include <gtest/gtest.h>

#include "tests/solver/build.h"

namespace coatday::solver::test {
namespace {

Schedule solved(const Problem& p, const Limits& limits = {}) {
  const Outcome outcome = solve(p, limits);
  const auto* found = std::get_if<Found>(&outcome);
  if (found == nullptr) {
    ADD_FAILURE() << "no schedule";
    return {std::vector<Assignment>(p.activities.size()), std::vector<int>(p.holds.size(), -1), {}};
  }
  EXPECT_EQ(violations(p, found->schedule), std::vector<std::string>{});
  EXPECT_EQ(found->score, score(p, found->schedule));
  return found->schedule;
}

Time start_of(const Schedule& s, int a) { return s.activities[static_cast<std::size_t>(a)].start; }

Problem empty(Time horizon) {
  Problem p;
  p.horizon = horizon;
  return p;
}

TEST(Solve, NothingToDo) {
  const Outcome outcome = solve(Problem{});
  ASSERT_TRUE(std::holds_alternative<Found>(outcome));
  EXPECT_EQ(std::get<Found>(outcome).score, Score{});
}

TEST(Solve, CalendarsAndDrying) {
  Problem p = empty(100);
  const int coat = add(p, {8, 16}, 3);
  const int sand = add(p, {8, 16}, 2);
  p.activities[1].starts.push_back({32, 40});
  p.minimum_lags.push_back({end(coat), sand, shift(6), -1});
  p.goals.push_back({sand, unreachable, 1, -1});
  const Schedule s = solved(p);
  EXPECT_EQ(start_of(s, coat), 8);
  EXPECT_EQ(start_of(s, sand), 32);  // dry at 17, after hours
}

TEST(Solve, ThePastIsAsItIs) {
  Problem p = empty(50);
  const int done = add(p, {-20, -19}, 3);
  const int next = add(p, {0, 40}, 2);
  p.minimum_lags.push_back({end(done), next, shift(24), -1});
  p.goals.push_back({next, unreachable, 1, -1});
  const Schedule s = solved(p);
  EXPECT_EQ(start_of(s, done), -20);
  EXPECT_EQ(start_of(s, next), 7);
}

TEST(Solve, TwoPeopleThreeTasks) {
  Problem p = empty(100);
  p.resources = {{2, -1}};
  for (const Time length : {6, 4, 3}) {
    const int work = add(p, {0, 90}, length, {{0, 1}});
    const int done = add(p, {0, 100}, 0);
    p.minimum_lags.push_back({end(work), done, nullptr, -1});
    p.goals.push_back({done, unreachable, 1, -1});
  }
  const Outcome outcome = solve(p);
  EXPECT_EQ(std::get<Found>(outcome).score.ready, 7);  // 6 beside 4 and 3
  EXPECT_EQ(ready_bound(p), 7);                        // 13 hours for two
}

TEST(Solve, TheUrgentOneGoesFirst) {
  Problem p = empty(100);
  p.resources = {{1, -1}};
  const int idle = add(p, {0, 90}, 10, {{0, 1}});
  const int urgent = add(p, {0, 90}, 5, {{0, 1}});
  p.goals = {{idle, 50, 1, -1}, {urgent, 0, 1, -1}};
  const Schedule s = solved(p);
  EXPECT_EQ(start_of(s, urgent), 0);
  EXPECT_EQ(start_of(s, idle), 5);
}

TEST(Solve, AWindowMovesWhatComesBefore) {
  Problem p = empty(100);
  const int first = add(p, {0, 50}, 2);
  const int second = add(p, {20, 60}, 2);
  p.maximum_lags.push_back({end(first), second, shift(8), -1, std::nullopt});
  p.minimum_lags.push_back({end(first), second, shift(1), -1});
  p.goals.push_back({second, unreachable, 1, -1});
  const Schedule s = solved(p);
  EXPECT_EQ(start_of(s, first), 10);
  EXPECT_EQ(start_of(s, second), 20);
}

struct Recoat {
  Problem p = empty(100);
  int first = 0, second = 0, scuff = 0;
  explicit Recoat(Interval second_starts) {
    p.resources = {{1, -1}};
    first = add(p, {0, 1}, 2, {{0, 1}});
    second = add(p, second_starts, 2, {{0, 1}});
    scuff = add(p, {0, 60}, 3, {{0, 1}});
    p.activities[static_cast<std::size_t>(scuff)].optional = true;
    p.minimum_lags = {{end(first), second, shift(4), -1}, {end(first), scuff, shift(6), -1}, {end(scuff), second, nullptr, -1}};
    p.maximum_lags.push_back({end(first), second, shift(8), -1, scuff});
    p.goals.push_back({second, unreachable, 1, -1});
  }
};

TEST(Solve, WithinTheWindowNothingIsScuffed) {
  const Recoat r({0, 60});
  const Schedule s = solved(r.p);
  EXPECT_EQ(start_of(s, r.second), 6);
  EXPECT_FALSE(s.activities[static_cast<std::size_t>(r.scuff)].present);
}

TEST(Solve, PastTheWindowTheCoatIsScuffedFirst) {
  const Recoat r({30, 60});
  const Schedule s = solved(r.p);
  EXPECT_TRUE(s.activities[static_cast<std::size_t>(r.scuff)].present);
  EXPECT_EQ(start_of(s, r.second), 30);
  EXPECT_GE(start_of(s, r.scuff), 8);
}

TEST(Solve, ARemedyThatTakesTimeDelays) {
  Recoat r({11, 60});  // the window closes at 10, the scuff begins at 8 and ends at 11
  EXPECT_EQ(start_of(solved(r.p), r.second), 11);
  r.p.activities[static_cast<std::size_t>(r.scuff)].starts = {{10, 60}};
  EXPECT_EQ(start_of(solved(r.p), r.second), 13);
}

TEST(Solve, DryingPlacesAreHeld) {
  Problem p = empty(100);
  p.resources = {{1, -1}};
  for (int piece = 0; piece < 3; ++piece) {
    const int coat = add(p, {0, 80}, 1);
    const int away = add(p, {0, 90}, 1);
    p.minimum_lags.push_back({end(coat), away, shift(4), -1});
    p.holds.push_back({coat, {away}, end(coat), nullptr, {{0, 1}}, -1});
    p.goals.push_back({away, unreachable, 1, -1});
  }
  const Outcome outcome = solve(p);
  EXPECT_EQ(std::get<Found>(outcome).score.ready, 15);  // one after the other, 5 each
}

TEST(Solve, AHoldEndsAtItsLimit) {
  Problem p = empty(100);
  p.resources = {{1, -1}};
  const int one = add(p, {0, 80}, 2), other = add(p, {0, 80}, 2);
  const int away = add(p, {50, 90}, 1);
  p.holds = {{one, {away}, end(one), shift(6), {{0, 1}}, -1}, {other, {}, end(other), shift(6), {{0, 1}}, -1}};
  p.goals = {{one, unreachable, 1, -1}, {other, unreachable, 1, -1}};
  const Schedule s = solved(p);
  EXPECT_EQ(std::max(start_of(s, one), start_of(s, other)), 8);
}

// The longer it waits, the longer both last. A pass that tried each start would try them all.
TEST(Solve, NoStartIsTriedThatOnlyMakesTwoHoldsLonger) {
  constexpr Time far = 500'000'000;
  Problem p = empty(far);
  p.resources = {{1, -1}};
  const int one = add(p, {0, far / 2}, 2), other = add(p, {0, far / 2}, 2), away = add(p, {0, far / 2}, 1);
  for (const int coat : {one, other}) {
    p.minimum_lags.push_back({end(coat), away, nullptr, -1});
    p.holds.push_back({coat, {away}, end(coat), nullptr, {{0, 1}}, -1});
  }
  p.goals = {{away, unreachable, 1, -1}};
  EXPECT_FALSE(std::holds_alternative<Found>(solve(p)));
}

TEST(Solve, TheFreePlaceIsChosen) {
  Problem p = empty(100);
  p.resources = {{1, -1}, {1, -1}};
  const int one = add(p, {0, 80}, 2), other = add(p, {0, 80}, 2);
  for (const int coat : {one, other}) p.holds.push_back({coat, {}, end(coat), shift(6), {{0, 1}, {1, 1}}, -1});
  p.goals = {{one, unreachable, 1, -1}, {other, unreachable, 1, -1}};
  const Schedule s = solved(p);
  EXPECT_EQ(start_of(s, one), 0);
  EXPECT_EQ(start_of(s, other), 0);
  EXPECT_NE(s.hold_choice[0], s.hold_choice[1]);
}

TEST(Solve, DustWaitsForTheFilm) {
  Problem p = empty(100);
  const int coat = add(p, {0, 1}, 2);
  const int sand = add(p, {0, 90}, 3);
  p.exclusions.push_back({{{coat, 2, shift(12)}}, {{sand, 1, nullptr}}, -1});
  p.goals.push_back({sand, unreachable, 1, -1});
  EXPECT_EQ(start_of(solved(p), sand), 13);  // tack-free at 12, and dust from 1 before
}

TEST(Solve, ASetupIsShared) {
  Problem p = empty(100);
  p.resources = {{1, -1}};
  p.sharing_gap = 2;
  for (int i = 0; i < 3; ++i) {
    const int coat = add(p, {0, 80}, 5, {{0, 1}});
    p.activities.back().family = 0;
    p.activities.back().end_shared = shift(3);
    p.goals.push_back({coat, unreachable, 1, -1});
  }
  const Outcome outcome = solve(p);
  const Score& reached = std::get<Found>(outcome).score;
  EXPECT_EQ(reached.setups, 1);
  EXPECT_EQ(reached.ready, 8);  // 5, then 3
}

TEST(Solve, TheSameSeedGivesTheSameSchedule) {
  Problem p = empty(400);
  p.resources = {{2, -1}};
  for (int i = 0; i < 30; ++i) {
    const int work = add(p, {0, 350}, 3 + i * 7 % 11, {{0, 1}});
    if (i % 3 != 0) p.minimum_lags.push_back({end(work - 1), work, shift(i % 5), -1});
    p.goals.push_back({work, i * 3, 1.0 + i % 2, -1});
  }
  const Schedule one = solved(p), again = solved(p);
  for (int a = 0; a < 30; ++a) EXPECT_EQ(start_of(one, a), start_of(again, a));
}

TEST(Solve, WhatCannotBeProvenIsNotFoundAndNamed) {
  Problem p = empty(10);
  p.resources = {{1, 7}};
  for (int i = 0; i < 3; ++i) add(p, {0, 8}, 4, {{0, 1}}, i);  // 12 steps of work in 10
  const Outcome outcome = solve(p);
  ASSERT_TRUE(std::holds_alternative<NotFound>(outcome));
  const auto& not_found = std::get<NotFound>(outcome);
  EXPECT_GE(not_found.activity, 0);
  EXPECT_EQ(not_found.blockers.front(), 7);
  EXPECT_EQ(ready_bound(p), unreachable);  // which does tell that nothing fits
}

TEST(Score, CountsInOrder) {
  Problem p = empty(100);
  for (int i = 0; i < 3; ++i) add(p, {0, 50}, 1);
  p.activities[0].family = p.activities[1].family = 0;
  p.goals = {{0, 4, 2, -1}, {1, 20, 1, -1}};
  const Schedule s{{at(7, 8), {9, 10, true, true}, at(30, 31)}, {}, {}};
  EXPECT_EQ(score(p, s), (Score{6, 0, 9, 0, 16, 1}));
  EXPECT_LT((Score{0, 9, 99, 9, 99, 9}), (Score{1, 0, 0, 0, 0, 0}));
  EXPECT_LT((Score{0, 0, 9, 9, 99, 9}), (Score{0, 1, 0, 0, 0, 0}));
  EXPECT_LT((Score{0, 0, 5, 9, 99, 9}), (Score{0, 0, 6, 0, 0, 0}));
  EXPECT_LT((Score{0, 0, 5, 1, 99, 9}), (Score{0, 0, 5, 2, 0, 0}));
}

}  // namespace
}  // namespace coatday::solver::test
