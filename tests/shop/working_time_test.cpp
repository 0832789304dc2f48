// Shifts as instants. Dates of summer time in the United States: second Sunday in March to first Sunday in November (15 U.S.C. 260a).
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "shop/shop.h"

namespace coatday::shop {
namespace {

using namespace std::chrono_literals;

Instant utc(int month, int d, Minutes clock) { return std::chrono::sys_days(date::sys_days(date::year(2027) / month / d)) + clock; }
LocalDay day(int month, int d) { return LocalDay(date::year(2027) / month / d); }

Shop chicago(std::vector<Shift> week) {
  Shop shop;
  shop.zone = Zone::find("America/Chicago").value();
  shop.week = std::move(week);
  return shop;
}

std::vector<Shift> every_day(Minutes from, Minutes until) {
  std::vector<Shift> week;
  for (unsigned d = 0; d < 7; ++d) week.push_back({weekday(d), from, until});
  return week;
}

std::chrono::seconds sum(const std::vector<WorkingTime>& all) {
  std::chrono::seconds total{0};
  for (const WorkingTime& w : all) total += w.end - w.begin;
  return total;
}

TEST(WorkingTime, FollowsTheWeek) {
  const Shop shop = chicago({{date::Monday, 8h, 12h}, {date::Monday, 13h, 17h}, {date::Wednesday, 9h, 13h}});
  const auto all = working_time(shop, utc(1, 11, 0h), utc(1, 18, 0h));  // Monday to Sunday evening in Chicago, six hours behind
  ASSERT_EQ(all.size(), 3U);
  EXPECT_EQ(all[0].begin, utc(1, 11, 14h));
  EXPECT_EQ(all[0].end, utc(1, 11, 18h));
  EXPECT_EQ(all[1].begin, utc(1, 11, 19h));
  EXPECT_EQ(all[2].begin, utc(1, 13, 15h));
  EXPECT_EQ(all[2].end, utc(1, 13, 19h));
}

TEST(WorkingTime, IsCutToTheRange) {
  const Shop shop = chicago(every_day(8h, 17h));
  const auto all = working_time(shop, utc(1, 11, 16h), utc(1, 12, 15h));
  ASSERT_EQ(all.size(), 2U);
  EXPECT_EQ(all[0].begin, utc(1, 11, 16h));
  EXPECT_EQ(all[0].end, utc(1, 11, 23h));
  EXPECT_EQ(all[1].begin, utc(1, 12, 14h));
  EXPECT_EQ(all[1].end, utc(1, 12, 15h));
}

TEST(WorkingTime, IsNoneOutsideShiftsAndInAnEmptyRange) {
  const Shop shop = chicago(every_day(8h, 17h));
  EXPECT_TRUE(working_time(shop, utc(1, 11, 0h), utc(1, 11, 14h)).empty());
  EXPECT_TRUE(working_time(shop, utc(1, 11, 16h), utc(1, 11, 16h)).empty());
  EXPECT_TRUE(working_time(shop, utc(1, 12, 16h), utc(1, 11, 16h)).empty());
}

TEST(WorkingTime, LeavesOutClosedDays) {
  Shop shop = chicago(every_day(8h, 17h));
  shop.closed = {day(1, 12)};
  const auto all = working_time(shop, utc(1, 11, 0h), utc(1, 14, 0h));
  ASSERT_EQ(all.size(), 2U);
  EXPECT_EQ(all[0].begin, utc(1, 11, 14h));
  EXPECT_EQ(all[1].begin, utc(1, 13, 14h));
}

TEST(WorkingTime, JoinsWhatMeetsOrOverlaps) {
  const Shop shop = chicago({{date::Monday, 13h, 17h}, {date::Monday, 8h, 12h}, {date::Monday, 12h, 14h}});
  const auto all = working_time(shop, utc(1, 11, 0h), utc(1, 13, 0h));
  ASSERT_EQ(all.size(), 1U);
  EXPECT_EQ(all[0].begin, utc(1, 11, 14h));
  EXPECT_EQ(all[0].end, utc(1, 11, 23h));
}

TEST(WorkingTime, RunsThroughMidnight) {
  const Shop shop = chicago({{date::Monday, 20h, 24h}, {date::Tuesday, 0h, 4h}});
  const auto all = working_time(shop, utc(1, 11, 0h), utc(1, 14, 0h));
  ASSERT_EQ(all.size(), 1U);
  EXPECT_EQ(all[0].end - all[0].begin, 8h);
}

TEST(WorkingTime, KeepsWallTimeWhenTheClocksChange) {
  const Shop shop = chicago(every_day(8h, 17h));
  const auto spring = working_time(shop, utc(3, 13, 6h), utc(3, 15, 6h));  // the clocks go on on Sunday 14 March
  ASSERT_EQ(spring.size(), 2U);
  EXPECT_EQ(spring[0].begin, utc(3, 13, 14h));
  EXPECT_EQ(spring[1].begin, utc(3, 14, 13h));
  EXPECT_EQ(sum(spring), 18h);
}

TEST(WorkingTime, ANightShiftIsAnHourShorterOrLongerThen) {
  const Shop shop = chicago(every_day(0h, 6h));
  EXPECT_EQ(sum(working_time(shop, utc(3, 14, 5h), utc(3, 15, 4h))), 5h);
  EXPECT_EQ(sum(working_time(shop, utc(11, 7, 5h), utc(11, 8, 5h))), 7h);  // they go back on Sunday 7 November
}

TEST(WorkingTime, AShiftInTheSkippedHourIsNone) {
  const Shop shop = chicago(every_day(2h, 3h));
  EXPECT_TRUE(working_time(shop, utc(3, 14, 6h), utc(3, 15, 4h)).empty());
}

RC_GTEST_PROP(WorkingTime, OfTwoRangesThatMeetIsThatOfBoth, ()) {
  Shop shop = chicago({});
  for (unsigned d = 0; d < 7; ++d)
    for (const int from : *rc::gen::container<std::vector<int>>(2, rc::gen::inRange(0, 1439)))
      shop.week.push_back({weekday(d), Minutes(from), Minutes(*rc::gen::inRange(from + 1, 1441))});
  for (const int d : *rc::gen::container<std::vector<int>>(3, rc::gen::inRange(1, 29))) shop.closed.push_back(day(3, d));
  const Instant from = utc(3, 1, Minutes(*rc::gen::inRange(0, 20000)));
  const Instant middle = from + Minutes(*rc::gen::inRange(0, 20000)), until = middle + Minutes(*rc::gen::inRange(0, 20000));
  const auto whole = working_time(shop, from, until);
  RC_ASSERT(sum(whole) == sum(working_time(shop, from, middle)) + sum(working_time(shop, middle, until)));
  for (std::size_t i = 0; i < whole.size(); ++i) {
    RC_ASSERT(from <= whole[i].begin && whole[i].begin < whole[i].end && whole[i].end <= until);
    if (i > 0) RC_ASSERT(whole[i - 1].end < whole[i].begin);
  }
}

}  // namespace
}  // namespace coatday::shop
