// The exact search against all schedules of very small problems, and what it must say of problems made by hand.

#include <gtest/gtest.h>

#include <algorithm>

#include "solver/base/violations.h"
#include "solver/clause_learning/infeasible_core.h"
#include "solver/clause_learning/search.h"
#include "solver/clause_learning/solver.h"
#include "solver/exact/neighbours.h"
#include "solver/solve.h"
#include "tests/solver/build.h"
#include "tests/solver/exhaustive.h"
#include "tests/solver/random_problem.h"

namespace coatday::solver::test {
namespace {

constexpr SearchLimits patient{20'000, 0, nullptr};

struct Proven {
  SearchResult last;
  std::optional<Score> best;
  std::optional<Schedule> schedule;
};

Proven prove(const Problem& problem, Search& search) {
  Proven result;
  for (int call = 0; call < 20 && !result.last.exhausted; ++call) {
    result.last = search.improve(result.best, nullptr, patient);
    if (!result.last.schedule) continue;
    EXPECT_EQ(violations(problem, *result.last.schedule), std::vector<std::string>{});
    result.schedule = result.last.schedule;
    result.best = score(problem, *result.schedule);
  }
  return result;
}

// What is learned over starts alone must hold in every schedule, so in the best one.
void expect_holds(const std::vector<Search::StartBound>& clause, const Schedule& schedule, const std::string& name) {
  bool holds = false;
  for (const auto& bound : clause) {
    const Assignment& run = schedule.activities[static_cast<std::size_t>(bound.activity)];
    holds = holds || !run.present || (bound.at_least ? run.start >= bound.value : run.start <= bound.value);
  }
  EXPECT_TRUE(holds) << name << ": a learned clause that the best schedule breaks";
}

void compare(const Problem& problem, const std::string& name, int& infeasible) {
  ASSERT_TRUE(Search::supports(problem)) << name;
  const Exhausted truth = exhaust(problem);
  Search search(problem);
  if (truth.feasible) search.on_learned([&](const std::vector<Search::StartBound>& clause) { expect_holds(clause, truth.schedule, name); });
  const Proven proven = prove(problem, search);
  EXPECT_TRUE(proven.last.exhausted) << name;
  ASSERT_EQ(proven.best.has_value(), truth.feasible) << name;
  infeasible += truth.feasible ? 0 : 1;
  EXPECT_EQ(proven.last.infeasible, !truth.feasible) << name;
  if (!truth.feasible) return;
  EXPECT_EQ(proven.best->lateness, truth.best.lateness) << name;
  EXPECT_EQ(proven.best->ready, truth.best.ready) << name;
  EXPECT_LE(proven.last.lateness_bound, truth.best.lateness) << name;
  EXPECT_LE(proven.last.ready_bound, truth.least_ready) << name;
}

// Three that exclude each other, of which only one can be first; the bounds of each alone say nothing of that.
TEST(ClauseLearning, TriesOrdersOut) {
  Problem p;
  p.horizon = 30;
  p.resources = {{2, -1}};
  const int one = add(p, {0, 11}, 4, {{0, 2}}), other = add(p, {0, 11}, 4, {{0, 1}}), long_one = add(p, {0, 11}, 9, {{0, 2}});
  p.goals.push_back({add(p, {0, 31}, 0), unreachable, 1, -1});
  for (const int a : {one, other, long_one}) p.minimum_lags.push_back({end(a), 3, nullptr, -1});
  p.maximum_lags.push_back({start(one), other, shift(8), -1, std::nullopt});
  p.minimum_lags.push_back({start(one), other, shift(0), -1});
  Search search(p);
  EXPECT_EQ(search.solver().model.orders().all().size(), 3U);
  EXPECT_EQ(search.solver().model.orders().precedence(one, long_one), !search.solver().model.orders().precedence(long_one, one));
  (void)search.improve(std::nullopt, nullptr, {1, 0, nullptr});
  EXPECT_TRUE(search.solver().model.engine.trail.holds(search.solver().model.orders().precedence(one, other)));
}

class Counted final : public MonotoneFunction {
 public:
  [[nodiscard]] Time at(Time t) const override {
    ++calls;
    return t + 3;
  }
  mutable long calls = 0;
};

// Over years the model would take as long to build as the search may last.
TEST(ClauseLearning, LooksAtATimeOfASpanOnceForAllThatItExcludes) {
  constexpr Time horizon = 1000;
  constexpr int spans = 20;
  const auto tail = std::make_shared<Counted>();
  Problem p;
  p.horizon = horizon;
  Exclusion exclusion;
  for (int i = 0; i < spans; ++i) {
    const int a = add(p, {0, horizon - 10}, 1);
    (i % 2 == 0 ? exclusion.left : exclusion.right).push_back({a, 0, tail});
  }
  p.exclusions.push_back(exclusion);
  const Search search(p);
  EXPECT_LT(tail->calls, 3L * spans * horizon);
}

// Two orders that lags make a cycle: the conflict is theirs alone, at any bounds, and it is found long before the bounds cross.
TEST(ClauseLearning, SeesThatOrdersCloseACycle) {
  clause_learning::Engine engine;
  const clause_learning::Var x = engine.add(0, 1'000'000), y = engine.add(0, 1'000'000), one = engine.ask(), other = engine.ask();
  engine.arcs.minimum(x, clause_learning::Mapping(shift(5), 0, 1'000'000), y, {clause_learning::yes(one)});
  engine.arcs.minimum(y, clause_learning::Mapping(shift(-4), 0, 1'000'000), x, {clause_learning::yes(other)});
  ASSERT_TRUE(engine.begin());
  engine.decide(clause_learning::at_least(x, 7));
  ASSERT_TRUE(engine.propagate());
  engine.decide(clause_learning::yes(one));
  ASSERT_TRUE(engine.propagate());
  engine.decide(clause_learning::yes(other));
  ASSERT_FALSE(engine.propagate());
  EXPECT_LT(engine.trail.length(), 30);
  std::vector<clause_learning::Literal> because;
  engine.explain_conflict(because);
  std::sort(because.begin(), because.end(),
            [](clause_learning::Literal a, clause_learning::Literal b) { return a.bound_var < b.bound_var; });
  EXPECT_EQ(because, (std::vector<clause_learning::Literal>{clause_learning::yes(one), clause_learning::yes(other)}));
}

TEST(ClauseLearning, ProvesSmallProblems) {
  int infeasible = 0;
  for (unsigned bits = 0; bits < Features::all; ++bits) {
    const std::uint64_t seed = 1000 + bits / 5;
    compare(random_problem(features(bits), seed), "features " + std::to_string(bits) + ", seed " + std::to_string(seed), infeasible);
  }
  EXPECT_GT(infeasible, 100);
}

// Three of length 4 on two people, one of them due early.
Problem three_jobs() {
  Problem p;
  p.horizon = 20;
  p.resources = {{2, -1}};
  for (int i = 0; i < 3; ++i) {
    const int job = add(p, {0, 20}, 4, {{0, 1}});
    const int done = add(p, {0, 21}, 0);
    p.minimum_lags.push_back({end(job), done, nullptr, -1});
    p.goals.push_back({done, i == 2 ? 4 : unreachable, 2, -1});
  }
  return p;
}

TEST(ClauseLearning, StartsFromABestKnownScore) {
  const Problem p = three_jobs();
  Search search(p);
  const SearchResult better = search.improve(Score{8, 12, 0, 0}, nullptr, patient);
  ASSERT_TRUE(better.schedule);
  EXPECT_TRUE(better.exhausted);
  EXPECT_EQ(score(p, *better.schedule).lateness, 0);
  EXPECT_EQ(score(p, *better.schedule).ready, 8);
  const SearchResult none = search.improve(Score{0, 8, 0, 0}, nullptr, patient);
  EXPECT_FALSE(none.schedule);
  EXPECT_TRUE(none.exhausted);
  EXPECT_FALSE(none.infeasible);
}

TEST(ClauseLearning, StaysInANeighbourhood) {
  const Problem p = three_jobs();
  Search search(p);
  const SearchResult later = search.improve(std::nullopt, nullptr, patient, {{{0, {5, 7}}}, {{0, 2}, {2, 4}}, {}});
  ASSERT_TRUE(later.schedule);
  EXPECT_TRUE(later.exhausted);
  EXPECT_EQ(later.schedule->activities[0].start, 5);
  EXPECT_EQ(score(p, *later.schedule).ready, 17);
  EXPECT_EQ(score(p, *later.schedule).lateness, 26);
  const SearchResult impossible = search.improve(std::nullopt, nullptr, patient, {{}, {{0, 2}, {2, 0}}, {}});
  EXPECT_TRUE(impossible.exhausted);
  EXPECT_FALSE(impossible.infeasible);
  const SearchResult free = search.improve(std::nullopt, nullptr, patient);
  ASSERT_TRUE(free.schedule);
  EXPECT_EQ(score(p, *free.schedule).ready, 8);
}

// Two cycles of three on one machine, one after the other by a lag, and one that stands alone.
TEST(ClauseLearning, TakesCyclesInTurn) {
  Problem p;
  p.horizon = 60;
  p.resources = {{1, -1}};
  for (int i = 0; i < 7; ++i) add(p, {0, 60}, 2 + i % 3, {{0, 1}});
  for (const int first : {0, 3}) {
    for (const int i : {first, first + 1}) p.minimum_lags.push_back({start(i), i + 1, shift(3), -1});
    p.maximum_lags.push_back({start(first), first + 2, shift(11), -1, std::nullopt});
  }
  p.minimum_lags.push_back({start(3), 0, shift(1), -1});
  const Network network(p);
  Random random(1);
  const Neighbourhood turns = Neighbours(network, random).in_turn();
  std::vector<std::pair<int, int>> expected;
  for (const int before : {3, 4, 5}) {
    for (const int after : {0, 1, 2}) expected.emplace_back(before, after);
  }
  EXPECT_EQ(turns.orders, expected);
  const SearchResult found = Search(p).improve(std::nullopt, nullptr, patient, turns);
  ASSERT_TRUE(found.schedule);
  EXPECT_EQ(violations(p, *found.schedule), std::vector<std::string>{});
}

TEST(ClauseLearning, LooksNearAHintFirst) {
  const Problem p = three_jobs();
  Schedule hint;
  hint.activities = {at(0, 4), at(4, 4), at(4, 8), at(8, 8), at(0, 4), at(4, 4)};
  Search search(p);
  const SearchResult result = search.improve(score(p, hint), &hint, patient);
  EXPECT_FALSE(result.schedule);
  EXPECT_TRUE(result.exhausted);
}

TEST(ClauseLearning, TakesABoundFromOutside) {
  const Problem p = three_jobs();
  Search search(p);
  search.ready_from(8);
  const SearchResult result = search.improve(std::nullopt, nullptr, patient);
  EXPECT_TRUE(result.exhausted);
  EXPECT_EQ(result.ready_bound, 8);
  search.ready_from(30);
  EXPECT_TRUE(search.improve(std::nullopt, nullptr, patient).infeasible);
}

TEST(ClauseLearning, StopsAtItsLimits) {
  const Problem p = three_jobs();
  Search search(p);
  const std::atomic<bool> stop = true;
  const SearchResult result = search.improve(std::nullopt, nullptr, {0, 0, &stop});
  EXPECT_FALSE(result.schedule);
  EXPECT_FALSE(result.exhausted);
  EXPECT_EQ(result.conflicts, 0);
}

// Four of length 5 and one machine in 18 steps; nothing is wrong with any three of them, nor with the bounds.
TEST(ClauseLearning, NamesWhatContradicts) {
  Problem p;
  p.horizon = 40;
  p.resources = {{1, 50}, {3, 51}};
  const int begin = add(p, {0, 1}, 0);
  for (int i = 0; i < 5; ++i) {
    const int job = add(p, {0, 40}, 5, {{i < 4 ? 0 : 1, 1}}, i);
    p.maximum_lags.push_back({start(begin), job, shift(13), 10 + i, std::nullopt});
    p.minimum_lags.push_back({start(begin), job, shift(1), 20 + i});
  }
  const auto tags = infeasible_subset(p, patient);
  ASSERT_TRUE(tags);
  for (const Tag needed : {10, 11, 12, 13, 50}) EXPECT_EQ(std::count(tags->begin(), tags->end(), needed), 1) << needed;
  EXPECT_EQ(std::count(tags->begin(), tags->end(), 51), 0);
  EXPECT_EQ(std::count(tags->begin(), tags->end(), 14), 0);
  EXPECT_EQ(tags->size(), 5U);
  p.resources[0].capacity = 2;
  EXPECT_FALSE(infeasible_subset(p, patient));
}

TEST(ClauseLearning, NamesWhatIsLeftWhenTimeIsUp) {
  Problem p;
  p.horizon = 20;
  p.resources = {{1, 50}, {1, 51}};
  for (int i = 0; i < 3; ++i) add(p, {0, 5}, 4, {{0, 1}}, i);
  const std::atomic<bool> stop = false;
  const auto all = infeasible_subset(p, {20'000, 0, &stop}, 1e-9);
  ASSERT_TRUE(all);
  EXPECT_EQ(*all, tags_of(p));
  EXPECT_EQ(infeasible_subset(p, patient), (std::vector<Tag>{0, 1, 2, 50}));
}

TEST(ClauseLearning, NamesNoMoreThanContradicts) {
  int named = 0;
  for (unsigned bits = 0; bits < Features::all; bits += 3) {
    const Problem p = random_problem(features(bits), 500 + bits);
    if (const auto tags = infeasible_subset(p, patient)) {
      EXPECT_FALSE(exhaust(p).feasible) << bits;
      EXPECT_LE(tags->size(), 12U) << bits;
      ++named;
    }
  }
  EXPECT_GT(named, 20);
}

TEST(ClauseLearning, SaysWhatItDoesNotSupport) {
  Problem p = three_jobs();
  p.goals[0].weight = -1;
  EXPECT_FALSE(Search::supports(p));
  p = three_jobs();
  p.horizon = unreachable;
  EXPECT_FALSE(Search::supports(p));
}

}  // namespace
}  // namespace coatday::solver::test
