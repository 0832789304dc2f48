// Gathering work into visits, over very small problems with every feature, and visits counted another way.

#include "solver/gather/gather.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "solver/base/violations.h"
#include "solver/gather/visit_count.h"
#include "solver/heuristic/rework.h"
#include "solver/solve.h"
#include "tests/solver/build.h"
#include "tests/solver/random_problem.h"

namespace coatday::solver::test {
namespace {

constexpr Time day = 6;

std::size_t index(int i) { return static_cast<std::size_t>(i); }

/// Days of six units; work is open all the time, or rests for one unit within each day.
Presence presence(const Problem& problem, std::uint64_t seed) {
  Presence presence;
  for (Time t = 0; t <= problem.horizon; t += day) {
    presence.days.push_back(t);
    presence.halves.push_back(t);
    presence.halves.push_back(t + day / 2);
    if (seed % 3 == 0) {
      presence.open.push_back({t, t + 2});
      presence.open.push_back({t + 3, t + day});
    }
  }
  if (presence.open.empty()) presence.open = {{0, problem.horizon + 1}};
  presence.gap = static_cast<Time>(seed % 2);
  presence.shortest = 2;
  for (std::size_t i = 0; i < problem.activities.size(); ++i) {
    Hands hands;
    hands.on = (seed + i) % 5 != 0;
    hands.counts = (seed + i) % 4 != 0;
    hands.soon = i % 2 == 0;
    hands.trails = static_cast<Time>((seed + i) % 3 / 2);
    hands.before_next = (seed + i) % 7 == 0;
    presence.hands.push_back(hands);
  }
  return presence;
}

/// Moment by moment: 0 nobody, 1 somebody stays, 2 hands are on what makes no visit, 3 on what does.
int visits_by_the_moment(const Problem& problem, const Schedule& schedule) {
  const Presence& all = *problem.presence;
  const auto open = [&all](Time t) {
    return std::any_of(all.open.begin(), all.open.end(), [t](const Interval& one) { return one.begin <= t && t < one.end; });
  };
  std::vector<int> at(index(problem.horizon + 2 * day), 0);
  for (std::size_t i = 0; i < schedule.activities.size(); ++i) {
    const Assignment& run = schedule.activities[i];
    if (!run.present || !all.hands[i].on) continue;
    Time last = -1;
    for (Time t = run.start; t < run.end; ++t) {
      if (!open(t)) continue;
      at[index(t)] = std::max(at[index(t)], all.hands[i].counts ? 3 : 2);
      last = t;
    }
    if (last != run.end - 1) continue;
    for (Time t = run.end; t < run.end + all.hands[i].trails; ++t) at[index(t)] = std::max(at[index(t)], 1);
  }
  int visits = 0;
  for (Time begin = 0; begin <= problem.horizon; begin += day) {
    Time pause = all.gap + 1;
    bool counted = false;
    for (Time t = begin; t < begin + day; ++t) {
      if (!open(t)) continue;
      const int now = at[index(t)];
      const bool there = now > 1 || (now == 1 && pause <= all.gap);
      pause = there ? 0 : pause + 1;
      if (pause > all.gap) counted = false;
      if (now != 3 || counted) continue;
      counted = true;
      ++visits;
    }
  }
  return visits;
}

std::optional<Found> solved(const Problem& problem) {
  const Outcome outcome = solve(problem);
  const auto* found = std::get_if<Found>(&outcome);
  return found == nullptr ? std::nullopt : std::optional(*found);
}

Time day_of(Time t) { return t / day; }

TEST(Gather, KeepsEveryRuleAndTheDays) {
  int gathered_ones = 0, fewer = 0;
  for (unsigned bits = 0; bits < 2 * Features::all; ++bits) {
    Problem problem = random_problem(features(bits), bits / 3, {7, 30});
    const std::optional<Found> found = solved(problem);
    if (!found) continue;
    problem.presence = presence(problem, bits);
    const Schedule schedule = gathered(problem, {}, found->schedule);
    ++gathered_ones;
    ASSERT_EQ(violations(problem, schedule), std::vector<std::string>{}) << "features " << bits;
    const Gathered before = VisitCount(problem, found->schedule).score(), after = VisitCount(problem, schedule).score();
    EXPECT_LE(after, before) << "features " << bits;
    EXPECT_EQ(after.visits, visits_by_the_moment(problem, schedule)) << "features " << bits;
    fewer += after.visits < before.visits ? 1 : 0;
    for (const Goal& goal : problem.goals) {
      const Assignment &was = found->schedule.activities[index(goal.activity)], &is = schedule.activities[index(goal.activity)];
      if (!was.present) continue;
      EXPECT_LE(day_of(is.start), day_of(was.start)) << "features " << bits;
      EXPECT_LE(is.start, std::max(was.start, was.start <= goal.due ? goal.due : unreachable)) << "features " << bits;
    }
  }
  EXPECT_GT(gathered_ones, 1000);
  EXPECT_GT(fewer, 100);
}

TEST(Gather, TakesNoTryForAnAcceptedOne) {
  Problem problem = random_problem(features(0b11111111111), 5, {7, 30});
  for (std::uint64_t seed = 1; seed < 200; ++seed) {
    problem = random_problem(features(static_cast<unsigned>(seed * 37 % Features::all)), seed, {7, 30});
    const std::optional<Found> found = solved(problem);
    if (!found || !problem.alternatives.empty()) continue;
    const Network network(problem);
    Bounds bounds(network);
    ASSERT_TRUE(bounds.propagate());
    const Limits limits;
    const Budget budget(limits);
    Rework work(network, bounds, found->schedule, budget);
    const Schedule before = work.schedule();
    for (int a = 0; a < network.size; ++a) {
      if (!work.placed(a)) continue;
      if (work.change({{a, work.run(a).start + 1}}, {a % 2 == 0, a % 3 == 0})) work.undo();
      const Schedule after = work.schedule();
      for (std::size_t i = 0; i < before.activities.size(); ++i) {
        EXPECT_EQ(before.activities[i].present, after.activities[i].present);
        EXPECT_EQ(before.activities[i].start, after.activities[i].start);
      }
      EXPECT_EQ(before.hold_choice, after.hold_choice);
      EXPECT_EQ(violations(problem, after), std::vector<std::string>{});
    }
  }
}

// Two steps by one person, and a third on the next day that may as well be done on the first.
TEST(Gather, DoesInOneVisitWhatNeedsNoTwo) {
  Problem p;
  p.horizon = 100;
  p.resources = {{1, -1}};
  const int a = add(p, {0, 90}, 4, {{0, 1}});
  const int b = add(p, {10, 90}, 4, {{0, 1}});
  p.goals = {{b}};
  Presence presence;
  presence.open = {{0, 101}};
  presence.days = presence.halves = {0, 50, 100};
  presence.gap = 3;
  presence.shortest = 3;
  presence.hands = {{true, true, true, 0, false}, {true, true, true, 0, false}};
  std::optional<Found> found = solved(p);
  ASSERT_TRUE(found);
  EXPECT_EQ(found->schedule.activities[index(a)].start, 0);
  p.presence = presence;
  gather(p, {}, *found);
  EXPECT_EQ(found->schedule.activities[index(b)].start, 10);
  EXPECT_EQ(found->schedule.activities[index(a)].start, 6) << "as late as it has to be, and no later";
  EXPECT_EQ(VisitCount(p, found->schedule).score().visits, 1);
}

TEST(Gather, LeavesWhatIsKeptWhole) {
  Problem p;
  p.horizon = 100;
  const int a = add(p, {0, 90}, 4), b = add(p, {10, 90}, 4);
  Presence presence;
  presence.open = {{0, 101}};
  presence.days = presence.halves = {0};
  presence.gap = 3;
  presence.hands = {{true, true, true, 0, false}, {true, true, true, 0, false}};
  p.presence = presence;
  p.activities[index(a)].kept = 0;
  p.activities[index(b)].kept = 30;
  std::optional<Found> found = solved(p);
  ASSERT_TRUE(found);
  EXPECT_EQ(found->score.moved, 0);
  gather(p, {}, *found);
  EXPECT_EQ(found->schedule.activities[index(a)].start, 0);
  EXPECT_EQ(found->schedule.activities[index(b)].start, 30);
}

}  // namespace
}  // namespace coatday::solver::test
