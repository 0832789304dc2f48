#include "climate/log.h"

#include <gtest/gtest.h>

#include "climate/log_notes.h"

namespace coatday::climate {
namespace {

using namespace date::literals;
using std::chrono::hours;

const Zone chicago = Zone::find("America/Chicago").value();

Log read(const std::string& text, const LogForm& form = {}) {
  auto log = read_log(text, "log.csv", form, Zone());
  EXPECT_TRUE(log) << (log ? "" : log.error().message);
  return log ? *std::move(log) : Log();
}

std::string error_of(const std::string& text, const LogForm& form = {}) {
  const auto log = read_log(text, "log.csv", form, Zone());
  return log ? "" : std::to_string(log.error().line) + ":" + std::to_string(log.error().column) + ": " + log.error().message;
}

const std::string header = "time,t_C,rh_pct\n";
std::string row(int hour, int minute, const std::string& values) {
  const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
  return "2027-01-" + two(11 + hour / 24) + " " + two(hour % 24) + ":" + two(minute) + "," + values + "\n";
}
/// Hourly rows from 11 January on.
std::string hourly(int count, const std::function<std::string(int)>& values) {
  std::string text = header;
  for (int i = 0; i < count; ++i) text += row(i, 0, values(i));
  return text;
}

void expect_two(const Log& log) {
  ASSERT_EQ(log.readings.size(), 2U);
  EXPECT_EQ(log.readings[0].time, Instant(date::sys_days(2027_y / 1 / 31)) + hours(8));
  EXPECT_EQ(log.readings[1].time, log.readings[0].time + hours(1));
  EXPECT_NEAR(log.readings[0].temperature.value(), 20, 1e-9);
  EXPECT_NEAR(log.readings[1].temperature.value(), 20.5, 1e-9);
  EXPECT_NEAR(log.readings[0].humidity.value().value(), 0.45, 1e-12);
  EXPECT_TRUE(log.notes.empty()) << log.notes.front();
}

TEST(Log, FormsOfTheSameReadings) {
  expect_two(read("time,t_C,rh_pct\n2027-01-31 08:00,20,45\n2027-01-31 09:00,20.5,46\n"));
  expect_two(
      read("\xEF\xBB\xBFTime;Temperature (\xB0"
           "C);Humidity\r\n31.01.2027 08:00;20,0;45,0\r\n31.01.2027 09:00;20,5;46,0\r\n"));
  expect_two(read("No.\tRH\tTemp °F\tDate/Time\n1\t0.45\t68\t01/31/27 08:00:00 AM\n2\t0.46\t68.9\t01/31/27 09:00:00 AM\n"));
  expect_two(
      read("Site: bench, \"north\"\nStarted,2027-01-30\n\n\"Date Time, UTC+1\",\"Temp, °C\",\"RH, %\",\"Dew point, °C\"\n"
           "\"2027-01-31 09:00\",\"20\",\"45\",\"1\"\n\"2027-01-31 10:00\",\"20.5\",\"46\",\"1\"\n"));
  expect_two(read("Date,Time,TempC,Relative Humidity\n31/01/2027,08:00,20,45\n31/01/2027,09:00,20.5,46\n"));
  expect_two(read("Date,t_C,rh\n2027-01-31T02:00:00-06:00,20,45\n2027-01-31T03:00:00-06:00,20.5,46\n"));
  expect_two(read("time,t_C,rh_pct\n2027-01-31 09:00,20.5,46\n2027-01-31 08:00,20,45\n"));  // newest first
}

TEST(Log, ColumnsUnitDatesAndClockThatAreTold) {
  LogForm form{"", "when", "inside", "damp", Scale::fahrenheit, LogClock::utc, DateOrder::month_first};
  expect_two(read("when,outside,inside,damp\n1/31/2027 08:00,10,68,45\n1/31/2027 09:00,10,68.9,46\n", form));
  form = {};
  form.clock = LogClock::shop;
  const auto log = read_log("time,t_C,rh\n2027-07-01 08:00,20,45\n2027-07-01 09:00,20,45\n", "x", form, chicago).value();
  EXPECT_EQ(log.readings[0].time, Instant(date::sys_days(2027_y / 7 / 1)) + hours(13));
}

TEST(Log, WhatIsNotCertainIsAnError) {
  EXPECT_EQ(error_of("a,b\n1,2\n"),
            "1:1: none of the first 100 lines names a column of time and one of temperature; expected a header such as "
            "Date/Time,Temperature °C,Humidity %");
  LogForm form;
  form.temperature = "warm";
  EXPECT_EQ(error_of("time,t_C\n2027-01-31 08:00,20\n", form), "1:1: no column is named 'warm'; there are 'time', 't_C'");
  form.temperature = "t_F";
  EXPECT_EQ(error_of("time,t_C\n2027-01-31 08:00,20\n", form), "1:1: no column is named 't_F'; did you mean 't_C'?");
  EXPECT_EQ(error_of("a\n", form), "1:1: no column is named 't_F'; no line names a time and a temperature");
  EXPECT_EQ(error_of("time,Temp\n2027-01-31 08:00,20\n"), "1:6: the column 'Temp' does not say °C or °F; write its 'unit'");
  EXPECT_EQ(error_of("x\ntime,T1 temp °C,T2 temp °C\n"),
            "2:17: the columns 'T1 temp °C' and 'T2 temp °C' could both be the temperature; write which one");
  EXPECT_EQ(error_of(header + "01/02/2027 08:00,20,45\n"),
            "2:1: dates of this file could have the day or the month first; write 'dates: day first' or 'dates: month first'");
  EXPECT_EQ(error_of(header + "13/02/2027 08:00,20,45\n02/14/2027 08:00,20,45\n"),
            "3:1: this date has no month 14, where those before it, or 'dates', say day first");
  EXPECT_EQ(error_of("\xFF\xFEt"), "1:1: the text is in UTF-16; expected UTF-8");
}

TEST(Log, WhatHoldsNoReadingsIsAnError) {
  EXPECT_EQ(error_of(header), "2:1: no readings follow the line that names the columns");
  EXPECT_EQ(error_of(header + "yesterday,20,45\n"), "2:1: 'yesterday' is no date with a time; expected one such as 2027-01-11 08:00");
  EXPECT_EQ(error_of(header + "2027-01-31 08:00,warm,45\n"), "2:18: 'warm' is no temperature; expected a number");
  EXPECT_EQ(error_of(header + "2027-01-31 08:00,-50,45\n"), "2:1: the file has fewer than two readings of a temperature from -40 to 60 °C");
  EXPECT_EQ(error_of(header + "2027-01-31 08:00,20,45\n2027-01-31 18:00,20,45\n"),
            "2:1: no two readings are within 3 h of each other; expected readings that show how the air moves");
  EXPECT_EQ(error_of(header + "2027-01-31 08:00,20,45\n\"2027-01-31 09:00,20,45\n"), "3:1: a quote that is never closed");
  EXPECT_EQ(error_of(header + "1997-01-31 08:00,20,45\n"), "2:1: no row has a date that is in the calendar and from 2000 to 2036");
}

TEST(Log, FahrenheitTakenForCelsiusIsRefused) {
  const auto warm = [](int i) { return std::to_string(50 + i) + ",45"; };
  EXPECT_EQ(error_of(hourly(24, warm)), "2:1: half of the temperatures are 62 °C or more, which no shop is; are they in °F?");
  EXPECT_EQ(error_of(hourly(24, [](int i) { return i % 3 == 0 ? "999,45" : "21,45"; })), "") << "a mark for what is missing is no heat";
}

TEST(Log, FractionsUnderAColumnOfPercentAreTold) {
  const Log log = read(hourly(3, [](int i) { return "20,0.4" + std::to_string(i); }));
  EXPECT_NEAR(log.readings[1].humidity.value().value(), 0.41, 1e-12);
  EXPECT_EQ(log.notes, (std::vector<std::string>{"no humidity is above 1: taken as fractions, though the column's name says percent"}));
}

TEST(Log, KnowsTheDaysOfItsReadings) {
  EXPECT_EQ(read(hourly(30, [](int i) { return "20,4" + std::to_string(i % 9); })).days, "Mon 11 Jan 2027 to Tue 12 Jan 2027");
}

TEST(Log, QuotedDecimalCommas) { expect_two(read("time,t_C,rh_pct\n2027-01-31 08:00,\"20,0\",45\n2027-01-31 09:00,\"20,5\",46\n")); }

TEST(Log, RowsThatCannotBeReadAreDroppedAndTold) {
  const Log log = read(header + row(0, 0, "20,45") + "battery low\n" + row(1, 0, "20,45") + row(2, 0, "--,45") + row(3, 0, "85,45") +
                       row(3, 10, "20,45"));
  EXPECT_EQ(log.readings.size(), 3U);
  EXPECT_EQ(log.notes, (std::vector<std::string>{"row 3: no date with a time that can be read; dropped",
                                                 "rows 5-6: no temperature from -40 to 60 °C; dropped"}));
}

TEST(Log, RepeatedRowsAndRowsOutOfOrder) {
  const Log log = read(header + row(0, 0, "20,40") + row(2, 0, "22,42") + row(1, 0, "21,41") + row(2, 0, "24,44") + row(3, 0, "20,45"));
  ASSERT_EQ(log.readings.size(), 4U);
  EXPECT_EQ(log.readings[1].temperature, Celsius(21));
  EXPECT_EQ(log.readings[2].temperature, Celsius(23));
  EXPECT_NEAR(log.readings[2].humidity.value().value(), 0.43, 1e-12);
  EXPECT_EQ(log.notes, (std::vector<std::string>{"row 4: earlier than a row before; put in order",
                                                 "row 5: the time of another row; the mean of both is taken"}));
}

TEST(Log, ADeadHumiditySensor) {
  const Log log = read(hourly(12, [](int i) { return std::to_string(10 + i) + ",45"; }));
  for (const Reading& r : log.readings) EXPECT_FALSE(r.humidity);
  EXPECT_EQ(log.notes,
            (std::vector<std::string>{"rows 2-13: humidity stuck at 45 % for 11 h while the temperature moved by 11.0 K: the sensor is "
                                      "taken as dead and the temperature alone used"}));
  const auto slowly = [](int i) { return std::to_string(20 + 0.05 * i) + ",45"; };
  EXPECT_EQ(read(hourly(28, slowly)).notes,
            (std::vector<std::string>{"rows 2-29: humidity stuck at 45 % for 1 day 3 h while the temperature moved by 1.4 K: the sensor is "
                                      "taken as dead and the temperature alone used"}));
  EXPECT_TRUE(read(hourly(20, slowly)).notes.empty()) << "0.95 K in 19 h";
  const Log still = read(hourly(12, [](int) { return "20,45"; }));
  EXPECT_TRUE(still.notes.empty()) << "constant air is not a dead sensor";
  EXPECT_TRUE(still.readings[5].humidity);
}

TEST(Log, HumidityThatCannotBe) {
  const Log log = read(hourly(6, [](int i) {
    return i == 2 ? "20,0.05" : i == 3 ? "20,127" : i == 4 ? "20," : i == 5 ? "20,103" : "20,50";
  }));
  EXPECT_EQ(log.notes, (std::vector<std::string>{"rows 4-6: no humidity, or none that can be (0.1 to 105 %); the temperature alone is "
                                                 "used"}));
  EXPECT_EQ(log.readings[5].humidity, RelativeHumidity(1));
  EXPECT_EQ(read("time,t_C\n" + row(0, 0, "20") + row(1, 0, "20")).notes.at(0),
            "no column of humidity: the moisture is that of the next source of air");
}

TEST(Log, GapsAreTold) {
  std::string text = header;
  for (const int quarter : {0, 1, 2, 3, 4, 10, 11, 12, 40, 41, 42}) text += row(quarter / 4, 15 * (quarter % 4), "20,45");
  const Log log = read(text);
  EXPECT_EQ(log.usual_step, Minutes(15));
  EXPECT_EQ(log.notes, (std::vector<std::string>{"after row 9: no reading for 7 h from Mon 11 Jan 03:00; the next source of air goes on",
                                                 "row 6: no reading for longer than usual after it; bridged in a straight line"}));
}

TEST(Log, RowsInWords) {
  EXPECT_EQ(rows_text({7}), "row 7");
  EXPECT_EQ(rows_text({9, 7, 8, 8}), "rows 7-9");
  EXPECT_EQ(rows_text({1, 3, 4, 9}), "rows 1, 3-4 and 9");
  EXPECT_EQ(rows_text({1, 3, 5, 7, 9, 11, 13}), "rows 1, 3, 5, 7, 9 and 2 more");
}

}  // namespace
}  // namespace coatday::climate
