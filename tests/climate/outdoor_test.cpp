#include "climate/outdoor.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <sstream>

#include "climate/psychrometrics.h"
#include "tests/climate/year.h"

namespace coatday::climate {
namespace {

using namespace date::literals;
using std::chrono::hours;

const std::string header = "month,day,hour,t_C,rh_pct";

Instant utc(year_month_day day, Minutes clock) { return Instant(date::sys_days(day)) + clock; }

/// A year whose temperature is the day of the month plus hundredths for the hour, and whose humidity is the month.
std::string telling_text(const std::string& comment) {
  return year_text(comment, header, [](int month, int day, int hour) {
    return std::to_string(day) + "." + (hour < 10 ? "0" : "") + std::to_string(hour) + "," + std::to_string(month);
  });
}
OutdoorYear telling_year(const std::string& comment) { return OutdoorYear::parse(telling_text(comment), "Somewhere").value(); }

std::string error_of(const std::string& text) {
  const auto year = OutdoorYear::parse(text, "x");
  return year ? "" : std::to_string(year.error().line) + ": " + year.error().message;
}

/// The constant year with one line replaced; line 3 is the first row.
std::string with_line(int number, const std::string& line) {
  std::string text = year_text("# utc_offset_h -6", header, [](int, int, int) { return "10,50"; });
  std::size_t at = 0;
  for (int i = 1; i < number; ++i) at = text.find('\n', at) + 1;
  return text.replace(at, text.find('\n', at) - at, line);
}

TEST(OutdoorYear, DecimalCommasAndFractions) {
  std::string text = year_text("# utc_offset_h 0", header, [](int, int, int) { return "20.5,0.65"; });
  std::replace(text.begin(), text.end(), ',', ';');
  std::replace(text.begin(), text.end(), '.', ',');
  const OutdoorYear year = OutdoorYear::parse(text, "x").value();
  EXPECT_NEAR(year.at(utc(2027_y / 3 / 10, hours(12))).temperature.value(), 20.5, 1e-12);
  EXPECT_NEAR(year.at(utc(2027_y / 3 / 10, hours(12))).humidity.value(), 0.65, 1e-12);
  EXPECT_EQ(year.notes().size(), 1U);
}

TEST(OutdoorYear, AnHourIsNamedByItsEnd) {
  const OutdoorYear year = telling_year("# utc_offset_h 0");
  EXPECT_NEAR(year.at(utc(2027_y / 3 / 10, hours(0) + Minutes(30))).temperature.value(), 10.01, 1e-12);
  EXPECT_NEAR(year.at(utc(2027_y / 3 / 10, hours(23) + Minutes(30))).temperature.value(), 10.24, 1e-12);
  EXPECT_NEAR(year.at(utc(2027_y / 3 / 10, hours(12))).humidity.value(), 0.03, 1e-12);
}

TEST(OutdoorYear, AnHourIsNamedByItsBeginningWhereTheFirstIsZero) {
  std::string text = "# utc_offset_h 0\n";
  std::istringstream lines(telling_text("# utc_offset_h 0"));
  std::string line;
  std::getline(lines, line);
  std::getline(lines, line);
  text += line + "\n";
  while (std::getline(lines, line)) {
    const std::size_t first = line.find(',', line.find(',') + 1) + 1, last = line.find(',', first);
    text += line.substr(0, first) + std::to_string(std::stoi(line.substr(first)) - 1) + line.substr(last) + "\n";
  }
  const OutdoorYear year = OutdoorYear::parse(text, "x").value();
  EXPECT_NEAR(year.at(utc(2027_y / 3 / 10, hours(0) + Minutes(30))).temperature.value(), 10.01, 1e-12);
  EXPECT_NEAR(year.at(utc(2027_y / 3 / 10, hours(23) + Minutes(30))).temperature.value(), 10.24, 1e-12);
  ASSERT_EQ(year.notes().size(), 1U);
  EXPECT_EQ(year.notes()[0], "its hours run from 0 to 23: each is taken to name its beginning");
  const std::size_t row = text.find("\n1,1,5,") + 5;
  EXPECT_EQ(error_of(text.replace(row, 1, "24")),
            "8: hour is '24'; expected the hour's beginning, as in the first row, a whole number from 0 to 23");
}

TEST(OutdoorYear, LinearBetweenTheMiddlesOfTheHours) {
  const OutdoorYear year = telling_year("# utc_offset_h 0");
  EXPECT_NEAR(year.at(utc(2027_y / 3 / 10, hours(13))).temperature.value(), 10.135, 1e-12);
  EXPECT_NEAR(year.at(utc(2027_y / 3 / 10, hours(13) + Minutes(15))).temperature.value(), 10.1375, 1e-12);
}

TEST(OutdoorYear, HoursAreLocalStandardTimeAllYear) {
  const OutdoorYear year = telling_year("# utc_offset_h -6.0");
  for (const auto day : {2027_y / 1 / 10, 2027_y / 7 / 10})  // summer time does not shift the file
    EXPECT_NEAR(year.at(utc(day, hours(18) + Minutes(30))).temperature.value(), 10.13, 1e-12);
  const OutdoorYear half = telling_year("# utc_offset_h +5.5");
  EXPECT_NEAR(half.at(utc(2027_y / 7 / 10, hours(7))).temperature.value(), 10.13, 1e-12);
}

TEST(OutdoorYear, TheYearRepeats) {
  const OutdoorYear year = telling_year("# utc_offset_h 0");
  for (const auto y : {1969_y, 2026_y, 2030_y}) EXPECT_NEAR(year.at(utc(y / 12 / 9, Minutes(30))).temperature.value(), 9.01, 1e-12);
  EXPECT_NEAR(year.at(utc(2028_y / 1 / 1, hours(0))).temperature.value(), (31.24 + 1.01) / 2, 1e-12);
}

TEST(OutdoorYear, LeapDayTakesTheAirOf28February) {
  const OutdoorYear year = telling_year("# utc_offset_h 0");
  EXPECT_NEAR(year.at(utc(2028_y / 2 / 29, hours(12) + Minutes(30))).temperature.value(), 28.13, 1e-12);
  EXPECT_NEAR(year.at(utc(2028_y / 2 / 29, hours(0))).temperature.value(), (28.24 + 28.01) / 2, 1e-12);
  EXPECT_NEAR(year.at(utc(2028_y / 3 / 1, hours(0))).temperature.value(), (28.24 + 1.01) / 2, 1e-12);
  EXPECT_NEAR(year.at(utc(2028_y / 12 / 31, hours(23) + Minutes(30))).temperature.value(), 31.24, 1e-12);
}

TEST(OutdoorYear, PressureIsTheMeanOrStandard) {
  const auto text =
      year_text("# utc_offset_h 0", header + ",p_hPa", [](int, int, int hour) { return hour % 2 ? "10,50,990" : "10,50,1000"; });
  EXPECT_NEAR(OutdoorYear::parse(text, "x").value().pressure().value(), 99'500, 1e-6);
  EXPECT_EQ(telling_year("# utc_offset_h 0").pressure(), standard_pressure);
}

TEST(OutdoorYear, PressureOfTheElevationWhereTheFileHasNone) {
  EXPECT_NEAR(telling_year("# utc_offset_h 0 elev_m 1650.0").pressure().value(), pressure_at_altitude(Metres(1650)).value(), 1e-9);
}

TEST(OutdoorYear, AFewMissingHoursAreBridgedAndTold) {
  for (const auto* line : {"", "1,1,2,,50", "1,1,2,,"}) {
    const auto year = OutdoorYear::parse(with_line(4, line), "x");
    ASSERT_TRUE(year) << line;
    EXPECT_EQ(year->notes()[0], "temperature missing in 1 of 8760 hours, bridged from those beside them: 1 Jan hour 2");
    EXPECT_NEAR(year->at(utc(2027_y / 1 / 1, hours(7) + Minutes(30))).temperature.value(), 10, 1e-12);
  }
}

TEST(OutdoorYear, ColumnsByNameInAnyOrderAndUnit) {
  const auto text = year_text("# utc_offset_h 0", "Month,Day,Hour,RH (%),Wind,Pressure kPa,Temp °F,Dew point °C",
                              [](int, int, int) { return "40,3,99,68,-40"; });
  const auto year = OutdoorYear::parse(text, "x").value();
  EXPECT_NEAR(year.at(utc(2027_y / 1 / 1, hours(7))).temperature.value(), 20, 1e-12);
  EXPECT_NEAR(year.at(utc(2027_y / 1 / 1, hours(7))).humidity.value(), 0.4, 1e-12);
  EXPECT_NEAR(year.pressure().value(), 99000, 1e-6);
  std::string tabs = text;
  std::replace(tabs.begin(), tabs.end(), ',', '\t');
  EXPECT_EQ(error_of(tabs), "");
}

TEST(OutdoorYear, TakesCarriageReturnsBlankLinesBlanksAndAByteOrderMark) {
  std::string text = "\xEF\xBB\xBF# utc_offset_h -6\r\n\r\n" + header + "\r\n";
  const std::string plain = telling_text("#");
  for (const char c : plain.substr(plain.find('\n', 2) + 1)) text += c == '\n' ? " \r\n" : c == ',' ? " , " : std::string(1, c);
  EXPECT_EQ(error_of(text), "");
  text.erase(text.find_last_not_of(" \r\n") + 1);
  EXPECT_EQ(error_of(text), "") << "without a last end of line";
}

TEST(OutdoorYear, EveryErrorNamesItsLineAndWhatWasExpected) {
  EXPECT_EQ(error_of(""), "1: the file has no rows; expected the header month,day,hour,t_C,rh_pct,p_hPa");
  EXPECT_EQ(error_of("hour,t\n"),
            "1: no column here is named month, day, relative humidity; expected a header such as "
            "month,day,hour,t_C,rh_pct,p_hPa");
  EXPECT_EQ(error_of("month,day,hour,t,rh\n"), "1: the column 't' does not say °C or °F; expected a name such as t_C or t_F");
  EXPECT_EQ(error_of("month,day,hour,t_C,rh,temp_C\n"), "1: the column 'temp_C' holds the same as 't_C'; expected one of the kind");
  EXPECT_EQ(error_of(header + ",p\n"), "1: the column 'p' has no unit that is known; expected a name such as p_hPa or p_Pa");
  EXPECT_EQ(error_of(header + "\n1,1,1,\"10,50"), "2: a quote that is never closed");
  EXPECT_EQ(error_of(with_line(1, "# no offset")),
            "1: no comment line holds the offset from UTC; expected one such as '# utc_offset_h -6'");
  EXPECT_EQ(error_of(with_line(1, "# utc_offset_h east")), "1: utc_offset_h is 'east'; expected hours from UTC, -14 to 14");
  EXPECT_EQ(error_of(with_line(1, "# utc_offset_h +-6")), "1: utc_offset_h is '+-6'; expected hours from UTC, -14 to 14");
  EXPECT_EQ(error_of(with_line(1, "# elev_m high")), "1: elev_m is 'high'; expected metres above the sea, -500 to 6000");
  EXPECT_EQ(error_of(with_line(3, "1,1,1,10")), "3: 4 fields; expected 5");
  EXPECT_EQ(error_of(with_line(3, "13,1,1,10,50")), "3: month is '13'; expected a whole number from 1 to 12");
  EXPECT_EQ(error_of(with_line(3, "2,30,1,10,50")), "3: month 2 has no day 30");
  EXPECT_EQ(error_of(with_line(4, "1,1,0,10,50")), "4: hour is '0'; expected the hour's end, a whole number from 1 to 24");
  EXPECT_EQ(error_of(with_line(3, "1,1,0,10,50")),
            "26: hour is '24'; expected the hour's beginning, as in the first row, a whole number from 0 to 23");
  EXPECT_EQ(error_of(with_line(3, "1,1,1.5,10,50")), "3: hour is '1.5'; expected the hour's end, a whole number from 1 to 24");
  EXPECT_EQ(error_of(with_line(4, "1,1,2,warm,50")),
            "4: t_C is 'warm'; expected a temperature from -90 to 60 °C, or nothing where it is missing");
  EXPECT_EQ(error_of(with_line(4, "1,1,2,nan,50")),
            "4: t_C is 'nan'; expected a temperature from -90 to 60 °C, or nothing where it is missing");
  EXPECT_EQ(error_of(with_line(4, "1,1,2,10,0")),
            "4: rh_pct is '0'; expected a relative humidity above 0, up to 100 %, or nothing where it is missing");
  EXPECT_EQ(error_of(with_line(4, "1,1,1,10,50")), "4: month 1, day 1, hour 1 again; it was given in line 3");
  EXPECT_EQ(
      error_of("# utc_offset_h 0\n" + header + "\n1,1,1,10,50\n"),
      "3: 8759 of 8760 hours in a row are without temperature, from 1 Jan hour 2; expected a whole year with gaps of at most 6 hours");
  EXPECT_EQ(error_of(with_line(3, "1,1,1,\x01\x8F" + std::string(50, '9') + ",50")),
            "3: t_C is '\?\?" + std::string(38, '9') + "…'; expected a temperature from -90 to 60 °C, or nothing where it is missing");
}

RC_GTEST_PROP(OutdoorYear, AnyBytesGiveAYearOrAnError, ()) {
  const auto bytes = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
  for (const auto& text : {bytes, "# utc_offset_h " + bytes, header + "\n" + bytes, header + "\n1,1,1," + bytes}) {
    const auto year = OutdoorYear::parse(text, "x");
    RC_ASSERT(!year && year.error().line >= 1 && !year.error().message.empty());
  }
}

}  // namespace
}  // namespace coatday::climate
