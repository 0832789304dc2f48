// A sound schedule, broken in each way in turn.

#include <gtest/gtest.h>

#include "solver/base/violations.h"
#include "solver/solve.h"
#include "tests/solver/build.h"

namespace coatday::solver::test {
namespace {

using Words = std::vector<std::string>;

// Two coats with drying between, a scuff that may take part between them, and something dusty elsewhere.
struct Broken : testing::Test {
  Problem p;
  Schedule s;
  int first = 0, second = 0, scuff = 0, dusty = 0;

  Broken() {
    p.horizon = 40;
    p.sharing_gap = 8;
    p.resources = {{1, -1}, {1, -1}};
    first = add(p, {0, 30}, 3, {{0, 1}});
    second = add(p, {0, 30}, 3, {{0, 1}});
    scuff = add(p, {0, 30}, 1, {{0, 1}});
    dusty = add(p, {0, 35}, 2);
    p.activities[static_cast<std::size_t>(scuff)].optional = true;
    for (const int coat : {first, second}) {
      p.activities[static_cast<std::size_t>(coat)].family = 0;
      p.activities[static_cast<std::size_t>(coat)].end_shared = shift(2);
      p.activities[static_cast<std::size_t>(coat)].starts_shared = {{1, 20}};
    }
    p.minimum_lags.push_back({end(first), second, shift(4), -1});
    p.maximum_lags.push_back({end(first), second, shift(8), -1, scuff});
    p.maximum_lags.push_back({start(first), dusty, shift(20), -1, std::nullopt});
    p.holds.push_back({first, {second}, end(first), shift(10), {{1, 1}, {1, 2}}, -1});
    p.exclusions.push_back({{{first, 0, shift(5)}, {second, 0, nullptr}}, {{dusty, 1, nullptr}}, -1});
    s.activities = {at(2, 5), at(9, 12), absent(), at(13, 15)};
    s.hold_choice = {0};
  }

  Assignment& run(int a) { return s.activities[static_cast<std::size_t>(a)]; }
  [[nodiscard]] Words found() const { return violations(p, s); }
};

TEST_F(Broken, NotAtAll) { EXPECT_EQ(found(), Words{}); }

TEST_F(Broken, Size) {
  s.activities.pop_back();
  EXPECT_EQ(found(), Words{"the schedule does not have the problem's activities and holds"});
}

TEST_F(Broken, Absence) {
  run(dusty) = absent();
  EXPECT_EQ(found(), Words{"activity 3 takes no part, but it is not optional"});
}

TEST_F(Broken, RemedyOfNothing) {
  run(scuff) = at(6, 7);
  EXPECT_EQ(found(), Words{"activity 2 takes part, but no window that it remedies is missed"});
}

TEST_F(Broken, WindowMissedWithoutRemedy) {
  run(second) = at(14, 17);
  run(dusty) = at(20, 22);
  EXPECT_EQ(found(), Words{"maximum lag 0: activity 1 starts at 14, after 13, without its remedy 2"});
  run(scuff) = at(6, 7);
  EXPECT_EQ(found(), Words{});
}

TEST_F(Broken, Window) {
  run(dusty) = at(23, 25);
  EXPECT_EQ(found(), Words{"maximum lag 1: activity 3 starts at 23, after 22"});
}

TEST_F(Broken, Drying) {
  run(second) = at(8, 11);
  EXPECT_EQ(found(), Words{"minimum lag 0: activity 1 starts at 8, before 9"});
}

TEST_F(Broken, Calendar) {
  p.activities[static_cast<std::size_t>(first)].starts = {{0, 2}, {3, 30}};
  EXPECT_EQ(found(), Words{"activity 0 starts at 2, outside its allowed starts"});
}

TEST_F(Broken, SharedCalendar) {
  run(second) = {9, 11, true, true};
  EXPECT_EQ(found(), Words{});
  p.activities[static_cast<std::size_t>(second)].starts_shared = {{10, 20}};
  EXPECT_EQ(found(), Words{"activity 1 starts at 9, outside its allowed starts"});
}

TEST_F(Broken, End) {
  run(dusty) = at(13, 16);
  EXPECT_EQ(found(), Words{"activity 3 ends at 16 instead of 15"});
}

TEST_F(Broken, Horizon) {
  p.horizon = 14;
  EXPECT_EQ(found(), Words{"activity 3 ends at 15, after the horizon 14"});
}

TEST_F(Broken, SharingTooLate) {
  p.sharing_gap = 3;
  run(second) = {9, 11, true, true};
  EXPECT_EQ(found(), Words{"activity 1 shares a set-up, but none of its family ends in time before it"});
}

TEST_F(Broken, SharingWithAnotherFamily) {
  p.activities[static_cast<std::size_t>(first)].family = 1;
  run(second) = {9, 11, true, true};
  EXPECT_EQ(found(), Words{"activity 1 shares a set-up, but none of its family ends in time before it"});
}

TEST_F(Broken, Capacity) {
  p.activities[static_cast<std::size_t>(dusty)].demands = {{0, 1}};
  p.exclusions.clear();
  run(dusty) = at(11, 13);
  EXPECT_EQ(found(), Words{"resource 0: 2 are in use from 11, the capacity is 1"});
}

TEST_F(Broken, DemandAboveCapacity) {
  p.activities[static_cast<std::size_t>(dusty)].demands = {{0, 1}, {0, 1}};
  p.activities[static_cast<std::size_t>(dusty)].end = nullptr;
  run(dusty) = at(13, 13);
  EXPECT_EQ(found(), Words{"activity 3 demands 2 of resource 0; its capacity is 1"});
}

TEST_F(Broken, HoldWithoutChoice) {
  s.hold_choice = {-1};
  EXPECT_EQ(found(), Words{"hold 0 has no choice"});
  s.hold_choice = {2};
  EXPECT_EQ(found(), Words{"hold 0 has no choice"});
}

TEST_F(Broken, HoldAboveCapacity) {
  s.hold_choice = {1};
  EXPECT_EQ(found(), (Words{"hold 0 demands 2 of resource 1; its capacity is 1", "resource 1: 2 are in use from 2, the capacity is 1"}));
}

TEST_F(Broken, HoldLastsUntilTheNext) {
  p.activities[static_cast<std::size_t>(dusty)].demands = {{1, 1}};
  p.exclusions.clear();
  run(dusty) = at(9, 11);
  EXPECT_EQ(found(), Words{});
  run(dusty) = at(8, 10);
  EXPECT_EQ(found(), Words{"resource 1: 2 are in use from 8, the capacity is 1"});
}

TEST_F(Broken, HoldLastsUntilItsLimit) {
  p.activities[static_cast<std::size_t>(dusty)].demands = {{1, 1}};
  p.exclusions.clear();
  p.holds[0].limit = shift(2);
  run(dusty) = at(7, 9);
  EXPECT_EQ(found(), Words{});
  run(dusty) = at(6, 8);
  EXPECT_EQ(found(), Words{"resource 1: 2 are in use from 6, the capacity is 1"});
}

TEST_F(Broken, HoldOfNobody) {
  p.holds.push_back({scuff, {}, start(scuff), shift(3), {{1, 1}}, -1});
  s.hold_choice = {0, -1};
  EXPECT_EQ(found(), Words{});
  s.hold_choice = {0, 0};
  EXPECT_EQ(found(), Words{"hold 1 has a choice, but activity 2 takes no part"});
}

struct LaidOut : Broken {  // two segments of 4; both coats rest there while the other may still
  LaidOut() {
    p.resources.push_back({8, -1, 4});
    p.holds.push_back({first, {}, start(first), shift(10), {{2, 3}}, -1});
    p.holds.push_back({second, {}, start(second), shift(10), {{2, 2}}, -1});
    s.hold_choice = {0, 0, 0};
    s.hold_stretch = {{}, {{0}, 1, 3}, {{1}, 0, 2}};
  }
};

TEST_F(LaidOut, Sound) { EXPECT_EQ(found(), Words{}); }

TEST_F(LaidOut, NotAtAll) {
  s.hold_stretch.clear();
  EXPECT_EQ(found(), Words{"the schedule is not laid out"});
}

TEST_F(LaidOut, OnTheSameStretch) {
  s.hold_stretch[2].segments = {0};
  EXPECT_EQ(found(), Words{"holds 1 and 2 lie on the same stretch of resource 2"});
}

TEST_F(LaidOut, AfterOneAnother) {
  s.hold_stretch[2].segments = {0};
  p.holds[1].limit = shift(7);  // until the second begins
  EXPECT_EQ(found(), Words{});
}

TEST_F(LaidOut, NotAsDemanded) {
  const Words wrong{"hold 2 is not laid out as its choice demands"};
  for (const Stretch& stretch : {Stretch{{1}, 3, 2}, Stretch{{1}, 0, 1}, Stretch{{2}, 0, 2}, Stretch{{0, 1}, 0, 2}, Stretch{{}, 0, 2}}) {
    s.hold_stretch[2] = stretch;
    s.hold_stretch[1] = {{0}, 1, 3};
    const Words words = found();
    ASSERT_FALSE(words.empty());
    EXPECT_EQ(words.front(), wrong.front());
  }
}

TEST_F(LaidOut, WholeSegments) {
  p.holds[2].choices = {{2, 5}};
  p.holds[1].limit = shift(7);
  s.hold_stretch[2] = {{0, 1}, 0, 4};
  EXPECT_EQ(found(), Words{});
}

TEST_F(Broken, Dust) {
  run(dusty) = at(12, 14);  // from 11 on
  EXPECT_EQ(found(), Words{"exclusion 0: activities 1 and 3 overlap"});
  run(dusty) = at(7, 9);  // from 6 on, and wet until 7; it ends as the second begins
  EXPECT_EQ(found(), Words{"exclusion 0: activities 0 and 3 overlap"});
  run(dusty) = at(8, 9);
  EXPECT_EQ(found(), Words{"activity 3 ends at 9 instead of 10"});  // touching is not overlapping
}

TEST_F(Broken, NoSpanExcludesItsOwnActivity) {
  p.exclusions.push_back({{{first, 0, nullptr}}, {{first, 0, nullptr}}, -1});
  EXPECT_EQ(found(), Words{});
}

}  // namespace
}  // namespace coatday::solver::test
