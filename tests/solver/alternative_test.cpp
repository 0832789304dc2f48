// Alternatives by hand. What all schedules of small problems say of them is in the tests over random problems.

#include <gtest/gtest.h>

#include <algorithm>

#include "solver/base/violations.h"
#include "solver/clause_learning/search.h"
#include "solver/solve.h"
#include "tests/solver/build.h"

namespace coatday::solver::test {
namespace {

bool present(const Schedule& s, int a) { return s.activities[static_cast<std::size_t>(a)].present; }

Found found(const Problem& p, long work = 0) {
  Limits limits;
  limits.work = work;
  const Outcome outcome = solve(p, limits);
  EXPECT_TRUE(std::holds_alternative<Found>(outcome));
  return std::holds_alternative<Found>(outcome) ? std::get<Found>(outcome) : Found{};
}

// Sanding takes one person 8 or two people 4, and then there is a delivery. Beside it someone may be needed for other work.
struct Sanding {
  Problem p;
  int by_one = 0, by_two = 0, deliver = 0;
  explicit Sanding(int people) {
    p.horizon = 60;
    p.resources = {{people, 7, 0}};
    by_one = add(p, {0, 50}, 8, {{0, 1}});
    by_two = add(p, {0, 50}, 4, {{0, 2}});
    deliver = add(p, {0, 60}, 0);
    p.alternatives.push_back({{{by_one}, {by_two}}, 9});
    for (const int sand : {by_one, by_two}) p.minimum_lags.push_back({end(sand), deliver, nullptr, 10});
    p.goals.push_back({deliver, unreachable, 1, -1});
  }
};

TEST(Alternative, TwoAreFaster) {
  const Sanding s(2);
  const Found result = found(s.p);
  EXPECT_TRUE(present(result.schedule, s.by_two));
  EXPECT_FALSE(present(result.schedule, s.by_one));
  EXPECT_EQ(result.score.ready, 4);
  EXPECT_TRUE(result.proven);  // by the bounds: it is 4 in one branch and 8 in the other
  EXPECT_EQ(result.ready_bound, 4);
}

TEST(Alternative, OneIsFasterWhileTheOtherHasSomethingElseToDo) {
  Sanding s(2);
  const int glue = add(s.p, {0, 1}, 6, {{0, 1}});
  const Found result = found(s.p, 1000);
  EXPECT_TRUE(present(result.schedule, s.by_one));
  EXPECT_EQ(result.score.ready, 8);  // else two from 6 to 10
  EXPECT_TRUE(result.proven);
  EXPECT_TRUE(present(result.schedule, glue));
}

TEST(Alternative, AWayForWhichThereAreTooFewIsLeftOut) {
  const Sanding s(1);
  EXPECT_TRUE(present(found(s.p).schedule, s.by_one));
  EXPECT_EQ(ready_bound(s.p), 8);
}

TEST(Alternative, AWayWithoutTimeIsLeftOut) {
  Sanding s(2);
  s.p.activities[static_cast<std::size_t>(s.by_two)].starts = {{58, 60}};
  EXPECT_EQ(ready_bound(s.p), 8);
  EXPECT_EQ(found(s.p).score.ready, 8);
}

TEST(Alternative, TheContradictionNamesTheAlternativeAndWhatRulesOutEachBranch) {
  Sanding s(1);
  s.p.activities[static_cast<std::size_t>(s.by_one)].starts = {{30, 40}};
  s.p.activities[static_cast<std::size_t>(s.by_one)].tag = 1;
  const int now = add(s.p, {0, 1}, 0);
  s.p.maximum_lags.push_back({start(now), s.deliver, shift(20), 11, std::nullopt});
  const Outcome outcome = solve(s.p);
  ASSERT_TRUE(std::holds_alternative<Contradiction>(outcome));
  std::vector<Tag> tags = std::get<Contradiction>(outcome).tags;
  std::sort(tags.begin(), tags.end());
  EXPECT_EQ(tags, (std::vector<Tag>{1, 7, 9, 10, 11}));
}

// Two on one machine; each branch of both takes 6 of it, and 10 are left.
TEST(Alternative, TheExactSearchNamesTheAlternativeToo) {
  Problem p;
  p.horizon = 10;
  p.resources = {{1, 7, 0}};
  for (Tag f = 0; f < 2; ++f) {
    const int whole = add(p, {0, 11}, 6, {{0, 1}}), first = add(p, {0, 11}, 3, {{0, 1}}), second = add(p, {0, 11}, 3, {{0, 1}});
    p.alternatives.push_back({{{whole}, {first, second}}, 20 + f});
  }
  Limits limits;
  limits.work = 1000;
  const Outcome outcome = solve(p, limits);
  ASSERT_TRUE(std::holds_alternative<Contradiction>(outcome));
  EXPECT_EQ(std::get<Contradiction>(outcome).tags, (std::vector<Tag>{7, 20, 21}));
}

TEST(Alternative, AnActivityMayStandInSeveralBranches) {
  Problem p;
  p.horizon = 40;
  const int a = add(p, {0, 30}, 1), b = add(p, {0, 30}, 2), c = add(p, {0, 30}, 9), last = add(p, {0, 40}, 0);
  p.alternatives.push_back({{{a, c}, {a, b}, {b, c}}, -1});
  for (const int other : {a, b, c}) p.minimum_lags.push_back({end(other), last, nullptr, -1});
  p.minimum_lags.push_back({end(a), b, shift(4), -1});
  p.goals.push_back({last, unreachable, 1, -1});
  const Found result = found(p, 1000);
  EXPECT_TRUE(present(result.schedule, a) && present(result.schedule, b) && !present(result.schedule, c));
  EXPECT_EQ(result.score.ready, 7);  // 1, 4 and 2
  EXPECT_TRUE(result.proven);
}

TEST(Alternative, AWayMayBeEmpty) {
  Problem p;
  p.horizon = 40;
  const int extra = add(p, {0, 30}, 5), last = add(p, {0, 40}, 0);
  p.alternatives.push_back({{{extra}, {}}, -1});
  p.minimum_lags.push_back({end(extra), last, nullptr, -1});
  p.goals.push_back({last, unreachable, 1, -1});
  EXPECT_FALSE(present(found(p).schedule, extra));
  EXPECT_EQ(ready_bound(p), 0);
}

TEST(Alternative, APartOfASearchKeepsABranch) {
  const Sanding s(2);
  Search search(s.p);
  const SearchResult result = search.improve(std::nullopt, nullptr, {1000, 0, nullptr}, {{}, {}, {{0, 0}}});
  ASSERT_TRUE(result.schedule);
  EXPECT_TRUE(present(*result.schedule, s.by_one));
  EXPECT_EQ(score(s.p, *result.schedule).ready, 8);
  EXPECT_TRUE(result.exhausted);
}

TEST(Alternative, IsChecked) {
  const Sanding s(2);
  EXPECT_TRUE(violations(s.p, {{at(0, 8), absent(), at(8, 8)}, {}, {}}).empty());
  EXPECT_EQ(violations(s.p, {{absent(), absent(), at(8, 8)}, {}, {}}).size(), 1U);
  EXPECT_EQ(violations(s.p, {{at(4, 12), at(0, 4), at(12, 12)}, {}, {}}).size(), 1U);
  EXPECT_EQ(violations(s.p, {{at(0, 8), absent(), absent()}, {}, {}}).size(), 1U);
}

}  // namespace
}  // namespace coatday::solver::test
