// Each contradiction names a smallest set of requirements.

#include <gtest/gtest.h>

#include <algorithm>

#include "solver/solve.h"
#include "tests/solver/build.h"

namespace coatday::solver::test {
namespace {

std::vector<Tag> sorted_tags(const Problem& p) {
  const Outcome outcome = solve(p);
  const auto* contradiction = std::get_if<Contradiction>(&outcome);
  if (contradiction == nullptr) {
    ADD_FAILURE() << "no contradiction";
    return {};
  }
  std::vector<Tag> tags = contradiction->tags;
  std::sort(tags.begin(), tags.end());
  return tags;
}

TEST(Contradiction, ADeadlineAgainstDrying) {
  Problem p;
  p.horizon = 1000;
  const int now = add(p, {0, 1}, 0, {}, 1);
  const int coat = add(p, {0, 900}, 2, {}, 2);
  const int bystander = add(p, {0, 900}, 2, {}, 3);
  const int deliver = add(p, {0, 900}, 0, {}, 4);
  p.minimum_lags = {{start(now), coat, shift(5), 10}, {end(coat), deliver, shift(40), 11}, {end(bystander), deliver, shift(30), 12}};
  p.maximum_lags = {{start(now), deliver, shift(45), 20, std::nullopt}, {start(now), bystander, shift(400), 21, std::nullopt}};
  EXPECT_EQ(sorted_tags(p), (std::vector<Tag>{10, 11, 20}));  // whenever now is: 5 + 2 + 40 against 45
}

TEST(Contradiction, InTheOrderOfTheReasoning) {
  Problem p;
  p.horizon = 1000;
  const int coat = add(p, {10, 900}, 2, {}, 1);
  const int next = add(p, {0, 900}, 0, {}, 2);
  const int last = add(p, {0, 50}, 0, {}, 3);
  p.minimum_lags = {{end(coat), next, shift(40), 10}, {end(next), last, shift(5), 11}};
  EXPECT_EQ(std::get<Contradiction>(solve(p)).tags, (std::vector<Tag>{1, 10, 11, 3}));
}

TEST(Contradiction, ACycleLeavesTheHorizon) {
  Problem p;
  p.horizon = 5000;
  const int one = add(p, {0, 4900}, 3, {}, 1);
  const int other = add(p, {0, 4900}, 3, {}, 2);
  p.minimum_lags.push_back({end(one), other, shift(7), 10});
  p.maximum_lags.push_back({end(one), other, shift(6), 11, std::nullopt});
  EXPECT_EQ(sorted_tags(p), (std::vector<Tag>{10, 11}));
}

TEST(Contradiction, AWindowThatClosesOvernight) {
  Problem p;
  p.horizon = 500;
  const int coat = add(p, {10, 12}, 1, {}, 1);
  const int recoat = add(p, {10, 12}, 1, {}, 2);
  for (Time day = 24; day < 400; day += 24) {
    for (auto& a : p.activities) a.starts.push_back({day + 10, day + 12});
  }
  p.minimum_lags.push_back({end(coat), recoat, shift(4), 10});
  p.maximum_lags.push_back({end(coat), recoat, shift(8), 11, std::nullopt});
  // The hours of the recoat, both lags, and those of the coat: without any one of them there is a time.
  EXPECT_EQ(sorted_tags(p), (std::vector<Tag>{1, 2, 10, 11}));
}

TEST(Contradiction, NoAllowedStart) {
  Problem p;
  p.horizon = 100;
  add(p, {0, 0}, 1, {}, 5);
  p.activities[0].starts.clear();
  EXPECT_EQ(sorted_tags(p), (std::vector<Tag>{5}));
}

TEST(Contradiction, NotDoneByTheHorizon) {
  Problem p;
  p.horizon = 100;
  add(p, {90, 99}, 15, {}, 5);
  EXPECT_EQ(sorted_tags(p), (std::vector<Tag>{5}));
}

TEST(Contradiction, MoreThanThereIs) {
  Problem p;
  p.horizon = 100;
  p.resources = {{2, 30}};
  add(p, {0, 50}, 1, {{0, 3}}, 5);
  EXPECT_EQ(sorted_tags(p), (std::vector<Tag>{5, 30}));
}

TEST(Contradiction, NoPlaceIsLargeEnough) {
  Problem p;
  p.horizon = 100;
  p.resources = {{2, 30}, {1, 31}};
  const int coat = add(p, {0, 50}, 1, {}, 5);
  p.holds.push_back({coat, {}, end(coat), shift(3), {{0, 3}, {1, 2}}, 40});
  EXPECT_EQ(sorted_tags(p), (std::vector<Tag>{30, 31, 40}));
}

TEST(Contradiction, ARemedyIsNoContradiction) {
  Problem p;
  p.horizon = 100;
  const int coat = add(p, {0, 1}, 1, {}, 1);
  const int recoat = add(p, {50, 60}, 1, {}, 2);
  const int scuff = add(p, {0, 60}, 1, {}, 3);
  p.activities.back().optional = true;
  p.minimum_lags.push_back({end(scuff), recoat, nullptr, 10});
  p.maximum_lags.push_back({end(coat), recoat, shift(8), 11, scuff});
  EXPECT_TRUE(std::holds_alternative<Found>(solve(p)));
  p.maximum_lags[0].remedy.reset();
  EXPECT_EQ(sorted_tags(p), (std::vector<Tag>{1, 2, 11}));
}

TEST(Contradiction, ManyTagsAreCutDownQuickly) {
  Problem p;
  p.horizon = 40'000;
  for (int i = 0; i < 300; ++i) {
    const int next = add(p, {0, 39'000}, 5, {}, -1);
    if (i > 0) p.minimum_lags.push_back({end(next - 1), next, shift(10), i});
  }
  p.maximum_lags.push_back({start(100), 110, shift(120), 1000, std::nullopt});
  std::vector<Tag> expected;
  for (Tag tag = 101; tag <= 110; ++tag) expected.push_back(tag);
  expected.push_back(1000);
  EXPECT_EQ(sorted_tags(p), expected);
}

}  // namespace
}  // namespace coatday::solver::test
