#include "climate/timetable.h"

#include <gtest/gtest.h>

namespace coatday::climate {
namespace {

using namespace date::literals;
using std::chrono::hours;

LocalDay day(year_month_day date) { return LocalDay(date); }
const LocalDay monday = day(2027_y / 1 / 11), saturday = day(2027_y / 1 / 16);

HeatingRule heated_to(double set_point) { return {{}, {}, {}, {{hours(7), hours(17), Celsius(set_point)}}, Celsius(8), {}}; }

TEST(Timetable, NightStandsForWhatIsOutsideTheHeatedHours) {
  HeatingRule rule = heated_to(20);

  rule.otherwise = Celsius(5);
  const Timetable timetable{{rule}, Celsius(13)};
  const LocalTime day = LocalDay(date::year(2027) / 1 / 11);
  EXPECT_EQ(timetable.set_point(day + hours(12)), Celsius(20));
  EXPECT_EQ(timetable.set_point(day + hours(22)), Celsius(13)) << "in place of 5 °C";
  EXPECT_EQ((Timetable{{}, Celsius(13)}).set_point(day), Celsius(13)) << "no rule at all";
}

TEST(Timetable, HoldsFromTheFirstMinuteUntilTheLast) {
  const Timetable timetable{{heated_to(20)}, {}};
  EXPECT_EQ(timetable.set_point(monday + hours(7) - std::chrono::seconds(1)), Celsius(8));
  EXPECT_EQ(timetable.set_point(monday + hours(7)), Celsius(20));
  EXPECT_EQ(timetable.set_point(monday + hours(17) - std::chrono::seconds(1)), Celsius(20));
  EXPECT_EQ(timetable.set_point(monday + hours(17)), Celsius(8));
}

TEST(Timetable, HeatedUntilMidnight) {
  const Timetable timetable{{{{}, {}, {}, {{hours(0), hours(24), Celsius(19)}}, {}, {}}}, {}};
  EXPECT_EQ(timetable.set_point(monday), Celsius(19));
  EXPECT_EQ(timetable.set_point(monday + hours(24) - std::chrono::seconds(1)), Celsius(19));
}

TEST(Timetable, OffWhereNothingIsSaid) {
  EXPECT_EQ(Timetable{}.on(monday), nullptr);
  EXPECT_EQ(Timetable{}.set_point(monday), std::nullopt);
  HeatingRule rule = heated_to(20);
  rule.otherwise.reset();
  EXPECT_EQ((Timetable{{rule}, {}}).set_point(monday), std::nullopt);
}

TEST(Timetable, TheLastRuleThatMatchesCounts) {
  const Timetable timetable{{heated_to(18), heated_to(21)}, {}};
  EXPECT_EQ(timetable.set_point(monday + hours(9)), Celsius(21));
}

TEST(Timetable, ByWeekday) {
  HeatingRule weekend = heated_to(12);
  weekend.days = {date::Saturday, date::Sunday};
  const Timetable timetable{{heated_to(20), weekend}, {}};
  EXPECT_EQ(timetable.set_point(monday + hours(9)), Celsius(20));
  EXPECT_EQ(timetable.set_point(saturday + hours(9)), Celsius(12));
  EXPECT_EQ(timetable.set_point(saturday + date::days(1) + hours(9)), Celsius(12));
  EXPECT_EQ(timetable.set_point(saturday + date::days(2) + hours(9)), Celsius(20));
}

TEST(Timetable, DatesIncludeBothEnds) {
  HeatingRule cold_snap = heated_to(16);
  cold_snap.first = day(2027_y / 1 / 12);
  cold_snap.last = day(2027_y / 1 / 14);
  const Timetable timetable{{heated_to(20), cold_snap}, {}};
  EXPECT_EQ(timetable.set_point(day(2027_y / 1 / 11) + hours(9)), Celsius(20));
  EXPECT_EQ(timetable.set_point(day(2027_y / 1 / 12) + hours(9)), Celsius(16));
  EXPECT_EQ(timetable.set_point(day(2027_y / 1 / 14) + hours(9)), Celsius(16));
  EXPECT_EQ(timetable.set_point(day(2027_y / 1 / 15) + hours(9)), Celsius(20));
}

TEST(Timetable, AnEndMayBeOpen) {
  HeatingRule rule = heated_to(20);
  rule.first = monday;
  const Timetable timetable{{rule}, {}};
  EXPECT_EQ(timetable.on(monday - date::days(1)), nullptr);
  EXPECT_NE(timetable.on(monday + date::days(1000)), nullptr);
}

}  // namespace
}  // namespace coatday::climate
