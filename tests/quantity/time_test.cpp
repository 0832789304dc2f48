#include "quantity/time.h"

#include <gtest/gtest.h>

#include <limits>
#include <string>

namespace coatday {
namespace {

using namespace std::chrono_literals;

LocalDay day(int year, unsigned month, unsigned dom) { return LocalDay(date::year(year) / date::month(month) / date::day(dom)); }

template <class T>
std::string error_of(const tl::expected<T, std::string>& parsed) {
  return parsed ? "accepted" : parsed.error();
}

TEST(CeilMinutes, NeverPromisesTooEarly) {
  EXPECT_EQ(ceil_minutes(Hours(1)), 60min);
  EXPECT_EQ(ceil_minutes(61s), 2min);
  EXPECT_EQ(ceil_minutes(Hours(0)), 0min);
  EXPECT_EQ(ceil_minutes(-30s), 0min);
}

TEST(CeilMinutes, IgnoresTheNoiseOfFloatingPoint) {
  for (int minutes = 0; minutes < 2000; ++minutes) EXPECT_EQ(ceil_minutes(Hours(minutes * (1.0 / 60))), Minutes(minutes));
}

TEST(CeilMinutes, AcceptsForever) {
  EXPECT_GT(ceil_minutes(Hours(std::numeric_limits<double>::infinity())), 24h * 365 * 99);
  EXPECT_GT(ceil_minutes(Hours(std::numeric_limits<double>::quiet_NaN())), 24h * 365 * 99);
  EXPECT_LT(ceil_minutes(Hours(-std::numeric_limits<double>::infinity())), -24h * 365 * 99);
}

TEST(Later, RoundsUpToTheSecond) {
  const Instant start(1000s);
  EXPECT_EQ(later(start, Hours(1)), start + 1h);
  EXPECT_EQ(later(start, 1500ms), start + 2s);
  EXPECT_EQ(later(start, Hours(0)), start);
}

TEST(Write, DatesAndTimes) {
  const LocalTime time = LocalTime(day(2027, 1, 11)) + 8h + 5min;  // a Monday, as any calendar of 2027 shows
  EXPECT_EQ(clock_time(time), "08:05");
  EXPECT_EQ(short_date(day_of(time)), "Mon 11 Jan");
  EXPECT_EQ(long_date(day_of(time)), "Mon 11 Jan 2027");
  EXPECT_EQ(day_and_time(time), "Mon 11 Jan 08:05");
  EXPECT_EQ(iso8601(Zone().to_instant(time), Zone()), "2027-01-11T08:05:00+00:00");
}

TEST(ParseDate, Accepts) {
  EXPECT_EQ(parse_date("2027-01-11"), day(2027, 1, 11));
  EXPECT_EQ(parse_date("2028-02-29"), day(2028, 2, 29));
  EXPECT_EQ(parse_date("2036-12-31"), day(2036, 12, 31));
}

TEST(ParseDate, SaysWhatIsWrong) {
  EXPECT_EQ(error_of(parse_date("11.1.2027")), "'11.1.2027' is not a date; expected YYYY-MM-DD such as 2027-01-11");
  EXPECT_EQ(error_of(parse_date("2027-02-29")), "'2027-02-29' is not in the calendar; expected a date such as 2027-01-11");
  EXPECT_EQ(error_of(parse_date("2037-01-01")), "'2037-01-01' is out of range; expected a date from 2000 to 2036");
  EXPECT_EQ(error_of(parse_date("1999-12-31")), "'1999-12-31' is out of range; expected a date from 2000 to 2036");
  for (const char* text :
       {"26-3-8", "2026-03-08xyz", "2026-3-08", "2026-13-08", "2026-00-10", "2026-01-00", "-026-01-01", "2026/01/01", ""}) {
    EXPECT_FALSE(parse_date(text)) << text;
  }
}

TEST(ParseClockTime, Accepts) {
  EXPECT_EQ(parse_clock_time("08:00"), 480min);
  EXPECT_EQ(parse_clock_time("8:05"), 485min);
  EXPECT_EQ(parse_clock_time("00:00"), 0min);
  EXPECT_EQ(parse_clock_time("24:00"), 1440min);
}

TEST(ParseClockTime, SaysWhatIsExpected) {
  EXPECT_EQ(error_of(parse_clock_time("8")), "'8' is not a time of day; expected HH:MM from 00:00 to 24:00");
  for (const char* text : {"24:01", "25:00", "08:60", "8:5", "08:00:00", "08.00", "-8:00", "8 am", ""})
    EXPECT_FALSE(parse_clock_time(text)) << text;
}

TEST(ParseLocalTime, AcceptsASpaceOrT) {
  const LocalTime expected = LocalTime(day(2027, 1, 11)) + 8h;
  EXPECT_EQ(parse_local_time("2027-01-11 08:00"), expected);
  EXPECT_EQ(parse_local_time("2027-01-11T08:00"), expected);
  EXPECT_EQ(parse_local_time("2027-01-10 24:00"), LocalTime(day(2027, 1, 11)));
}

TEST(ParseLocalTime, SaysWhatIsWrong) {
  EXPECT_EQ(error_of(parse_local_time("2027-01-11")), "'2027-01-11' is not a date and time; expected one such as 2027-01-11 08:00");
  EXPECT_EQ(error_of(parse_local_time("2027-02-30 08:00")), "'2027-02-30' is not in the calendar; expected a date such as 2027-01-11");
  EXPECT_EQ(error_of(parse_local_time("2027-01-11 8")), "'8' is not a time of day; expected HH:MM from 00:00 to 24:00");
  EXPECT_FALSE(parse_local_time("2027-01-11T08:00Z"));  // wall time has no offset
}

TEST(ParseWeekday, AcceptsShortAndLong) {
  EXPECT_EQ(parse_weekday("mon"), date::Monday);
  EXPECT_EQ(parse_weekday("Monday"), date::Monday);
  EXPECT_EQ(parse_weekday("SUN"), date::Sunday);
  EXPECT_EQ(error_of(parse_weekday("mondya")), "'mondya' is not a day of the week; did you mean 'monday'?");
  EXPECT_EQ(error_of(parse_weekday("1")), "'1' is not a day of the week; expected one such as mon or monday");
}

}  // namespace
}  // namespace coatday
