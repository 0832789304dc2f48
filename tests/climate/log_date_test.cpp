#include "climate/log_date.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "climate/log_clock.h"

namespace coatday::climate {
namespace {

using namespace date::literals;
using std::chrono::hours;

LocalTime local(year_month_day day, Minutes clock) { return LocalTime(LocalDay(day)) + clock; }

std::optional<LocalTime> read(std::string_view text, DateOrder order = DateOrder::day_first) {
  const auto written = read_written_time(text);
  return written ? written->local(order) : std::nullopt;
}

TEST(LogDate, Forms) {
  const LocalTime morning = local(2027_y / 1 / 11, Minutes(8 * 60 + 5));
  for (const auto* text : {"2027-01-11 08:05", "2027-01-11T08:05:00", "2027-1-11 8:05:00.250", "2027/01/11 08:05:00", "11.01.2027 08:05",
                           "11.01.2027 08.05.00", "11/01/2027 8:05 AM", "11/01/27 08:05:00 a.m.", "11-Jan-2027 08:05",
                           "Jan 11, 2027 8:05 am", "11 January 2027, 08:05", " 2027-01-11  08:05 "})
    EXPECT_EQ(read(text), morning) << text;
  EXPECT_EQ(read("01/11/2027 8:05 PM", DateOrder::month_first), morning + hours(12));
  EXPECT_EQ(read("2027-01-11 12:05 AM"), morning - hours(8));
  EXPECT_EQ(read("2027-01-11 12:05 PM"), morning + hours(4));
  EXPECT_EQ(read("2027-01-11 24:00"), local(2027_y / 1 / 12, Minutes(0)));
}

TEST(LogDate, WhatIsNone) {
  for (const auto* text :
       {"", "2027-01-11", "08:05", "2027-01-11 8", "2027-01-11 25:00", "2027-01-11 08:60", "2027-01-11 13:00 PM", "2027-01-11 0:30 AM",
        "11-13-11 08:00x", "2027-Jan 08:00", "1/2/3 08:00", "2027-01-11 08:05 ?", "Jan Feb 2027 08:00", "20270-01-11 08:00",
        "2027-13-11 08:05", "2027-02-29 08:05", "1999-12-31 08:05", "2037-01-01 08:05", "99999999999"})
    EXPECT_EQ(read(text), std::nullopt) << text;
}

TEST(LogDate, Offsets) {
  const auto offset = [](std::string_view text) { return read_written_time(text).value().offset; };
  EXPECT_EQ(offset("2027-01-11T08:05:00Z"), std::chrono::seconds(0));
  EXPECT_EQ(offset("2027-01-11T08:05:00-06:00"), hours(-6));
  EXPECT_EQ(offset("2027-01-11 08:05:00 +0530"), Minutes(330));
  EXPECT_EQ(offset("2027-01-11 08:05 UTC+1"), hours(1));
  EXPECT_EQ(offset("2027-01-11 08:05"), std::nullopt);
  EXPECT_EQ(offset_in_name("Date Time (GMT-06:00)"), hours(-6));
  EXPECT_EQ(offset_in_name("time_utc"), std::chrono::seconds(0));
  EXPECT_EQ(offset_in_name("Date/Time"), std::nullopt);
}

RC_GTEST_PROP(LogDate, AnyBytesAreADateOrNone, ()) {
  const auto text =
      *rc::gen::container<std::string>(rc::gen::element('1', '2', '0', ':', '-', '/', ' ', 'T', 'a', 'm', 'Z', '+', '.', 'J'));
  const auto time = read(text);
  if (time) RC_ASSERT(year_month_day(day_of(*time)).ok());  // an RC_ASSERT evaluates both sides of an `or`
}

const Zone chicago = Zone::find("America/Chicago").value();
Instant utc(year_month_day day, Minutes clock) { return Instant(date::sys_days(day)) + clock; }

// Summer time in the United States ends at 02:00 on the first Sunday in November and begins at 02:00 on the second Sunday in March
// (15 U.S.C. 260a): in 2026 and 2027 on 1 November and 14 March.
TEST(LogClock, TheHourThatComesTwiceIsResolvedByOrder) {
  std::vector<LocalTime> times;
  for (const int minute : {30, 45, 60, 75, 90, 105, 60, 75, 90, 105, 120}) times.push_back(local(2026_y / 11 / 1, Minutes(minute)));
  const ClockInstants result = instants_of(times, LogClock::shop, chicago);
  for (std::size_t i = 0; i < times.size(); ++i)
    EXPECT_EQ(result.instants[i], utc(2026_y / 11 / 1, hours(5) + Minutes(30) + static_cast<int>(i) * Minutes(15))) << i;
  EXPECT_EQ(result.second, (std::vector<std::size_t>{6, 7, 8, 9}));
  EXPECT_TRUE(result.never.empty());
}

TEST(LogClock, AnHourlyLoggerShowsTheSameTimeTwice) {
  std::vector<LocalTime> times;
  for (const int hour : {0, 1, 1, 2, 3}) times.push_back(local(2026_y / 11 / 1, hours(hour)));
  const ClockInstants result = instants_of(times, LogClock::shop, chicago);
  for (std::size_t i = 0; i < times.size(); ++i) EXPECT_EQ(result.instants[i], utc(2026_y / 11 / 1, hours(5 + static_cast<int>(i))));
}

TEST(LogClock, TheHourThatNeverComes) {
  std::vector<LocalTime> times;
  for (const int minute : {90, 120, 150, 180}) times.push_back(local(2027_y / 3 / 14, Minutes(minute)));
  const ClockInstants result = instants_of(times, LogClock::shop, chicago);
  EXPECT_EQ(result.instants[0], utc(2027_y / 3 / 14, Minutes(7 * 60 + 30)));
  EXPECT_EQ(result.instants[1], utc(2027_y / 3 / 14, hours(8)));
  EXPECT_EQ(result.instants[2], utc(2027_y / 3 / 14, Minutes(8 * 60 + 30)));
  EXPECT_EQ(result.instants[3], utc(2027_y / 3 / 14, hours(8))) << "03:00 summer time";
  EXPECT_EQ(result.never, (std::vector<std::size_t>{1, 2}));
}

TEST(LogClock, StandardTimeAllYearAndUtc) {
  const std::vector<LocalTime> times{local(2027_y / 7 / 1, hours(12)), local(2027_y / 1 / 1, hours(12))};
  const auto standard = instants_of(times, LogClock::standard, chicago).instants;
  EXPECT_EQ(standard[0], utc(2027_y / 7 / 1, hours(18)));
  EXPECT_EQ(standard[1], utc(2027_y / 1 / 1, hours(18)));
  EXPECT_EQ(instants_of(times, LogClock::utc, chicago).instants[0], utc(2027_y / 7 / 1, hours(12)));
  const Zone sydney = Zone::find("Australia/Sydney").value();
  EXPECT_EQ(instants_of(times, LogClock::standard, sydney).instants[1], utc(2027_y / 1 / 1, hours(2)));
}

}  // namespace
}  // namespace coatday::climate
