#include "climate/epw.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <chrono>

#include "climate/outdoor.h"
#include "climate/psychrometrics.h"
#include "tests/climate/year.h"

namespace coatday::climate {
namespace {

const std::string header =
    "LOCATION,Some Town,ST,XXX,made up,0,45.0,-90.0,-6.0,1000.0\n"
    "DESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\nHOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\n"
    "COMMENTS 1,caf\xE9 \"quoted\nCOMMENTS 2,\nDATA PERIODS,1,1,Data,Sunday,1/1,12/31\n";

using Row = std::function<std::string(int month, int day, int hour)>;

std::string record(int month, int day, int hour, const std::string& minute, const std::string& temperature, const std::string& humidity,
                   const std::string& pressure = "90000") {
  return "2001," + std::to_string(month) + "," + std::to_string(day) + "," + std::to_string(hour) + "," + minute + ",?9," + temperature +
         ",99.9," + humidity + "," + pressure + ",0,0\n";
}

/// A year of records; `row` gives any number of lines for an hour.
std::string epw(const Row& row, bool leap = false) {
  constexpr std::array days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  std::string text = header;
  for (int month = 1; month <= 12; ++month)
    for (int day = 1; day <= days.at(static_cast<std::size_t>(month - 1)) + (leap && month == 2 ? 1 : 0); ++day)
      for (int hour = 1; hour <= 24; ++hour) text += row(month, day, hour);
  return text;
}

std::string steady(int month, int day, int hour) { return record(month, day, hour, "0", "10.0", "50"); }

/// The steady year with that hour's lines of one day replaced.
std::string with_hour(int month, int day, int first, int last, const std::string& line) {
  return epw([&](int m, int d, int h) { return m == month && d == day && h >= first && h <= last ? line : steady(m, d, h); });
}

std::string error_of(const std::string& text) {
  const auto year = read_epw(text);
  return year ? "" : std::to_string(year.error().line) + ":" + std::to_string(year.error().column) + ": " + year.error().message;
}

TEST(Epw, HeaderGivesPlaceOffsetAndElevation) {
  const auto year = read_epw(epw([](int m, int d, int h) { return record(m, d, h, "0", "10.0", "50", "999999"); })).value();
  EXPECT_EQ(year.place, "Some Town");
  EXPECT_EQ(year.utc_offset, Hours(-6));
  EXPECT_NEAR(year.pressure.value(), pressure_at_altitude(Metres(1000)).value(), 1e-9) << "no pressure in the file";
  EXPECT_TRUE(year.notes.empty());
}

TEST(Epw, TheHeaderMayStandInAnyOrderAndBeShort) {
  const std::string records = epw(steady).substr(header.size());
  const auto year =
      read_epw("DATA PERIODS,1,1,Data,Sunday,1/1,12/31\nCOMMENTS 1,a typical year\nLOCATION,Z\xFCrich,,,x,0,47,9,1.0,400\n" + records);
  ASSERT_TRUE(year) << year.error().message;
  EXPECT_EQ(year->place, "Zürich") << "from Latin-1";
  EXPECT_EQ(year->years.words(), "a typical year");
  EXPECT_TRUE(year->notes.empty()) << "no record was taken for a line of the header";
  EXPECT_EQ(read_epw("LOCATION,Århus,,,x,0,56,10,1.0,10\n" + records).value().place, "Århus");
}

TEST(Epw, WhatHasNoLocationIsStillTakenForEpw) {
  std::string row;
  for (int i = 0; i < 35; ++i) row += "1,";
  for (const std::string first : {"DESIGN CONDITIONS,0\n", "COMMENTS 1,x\n", "data periods,1,1\n"}) EXPECT_TRUE(is_epw(first + row));
  EXPECT_TRUE(is_epw(row));
  EXPECT_FALSE(is_epw("month,day,hour,t_C,rh_pct\n1,1,1,2,3\n"));
  EXPECT_NE(error_of("DESIGN CONDITIONS,0\n" + record(1, 1, 1, "0", "10", "50")).find("no line LOCATION"), std::string::npos);
}

TEST(Epw, FractionsAreTakenAsSuchAndTold) {
  const auto year = read_epw(epw([](int m, int d, int h) { return record(m, d, h, "0", "10.0", h > 12 ? "0.5" : "1"); })).value();
  EXPECT_NEAR(year.hours[0].humidity.value(), 1, 1e-12);
  EXPECT_NEAR(year.hours[20].humidity.value(), 0.5, 1e-12);
  ASSERT_EQ(year.notes.size(), 1U);
  EXPECT_NE(year.notes[0].find("fractions"), std::string::npos);
}

TEST(Epw, AYearInFahrenheitIsRefused) {
  const auto error = error_of(epw([](int m, int d, int h) { return record(m, d, h, "0", h > 12 ? "60" : "45", "50"); }));
  EXPECT_EQ(error, "9:1: the year's mean is 52 °C, which no place on earth has; are they °F?");
}

TEST(Epw, AFileThatIsCutIsToldAtItsEnd) {
  const std::string whole = epw(steady);
  const auto cut = whole.find("2001,5,1,1,");
  EXPECT_EQ(error_of(whole.substr(0, cut)).substr(0, 5), "2888:") << "8 lines of header and 2880 hours";
}

TEST(Epw, AnHourIsNamedByItsEndAndPressureIsTheMean) {
  const auto year = read_epw(epw([](int m, int d, int h) {
                      return record(m, d, h, h % 2 ? "0" : "60", std::to_string(h), "50", h % 2 ? "90000" : "92000");
                    })).value();
  EXPECT_EQ(year.hours[hour_of_year(date::March, date::day(10), 0)].temperature, Celsius(1));
  EXPECT_EQ(year.hours[hour_of_year(date::March, date::day(10), 23)].temperature, Celsius(24));
  EXPECT_NEAR(year.pressure.value(), 91000, 1e-9);
}

TEST(Epw, SeveralRecordsAnHourAreAveraged) {
  const auto year = read_epw(epw([](int m, int d, int h) {
                      return record(m, d, h, "15", "9", "48") + record(m, d, h, "30", "10", "50") + record(m, d, h, "45", "99.9", "52") +
                             record(m, d, h, "60", "11", "54");
                    })).value();
  EXPECT_NEAR(year.hours[100].temperature.value(), 10, 1e-12);
  EXPECT_NEAR(year.hours[100].humidity.value(), 0.51, 1e-12);
  EXPECT_TRUE(year.notes.empty());
}

TEST(Epw, ALeapDayIsReadWhereThereIsOne) {
  const Row row = [](int m, int d, int h) { return record(m, d, h, "0", d == 29 ? "5" : d == 28 ? "3" : "10", "50"); };
  const auto hour = hour_of_year(date::February, date::day(29), 12);
  EXPECT_EQ(read_epw(epw(row, true)).value().hours[hour].temperature, Celsius(5));
  EXPECT_EQ(read_epw(epw(row)).value().hours[hour].temperature, Celsius(3));
}

TEST(Epw, MarksForMissingAreBridgedAndTold) {
  std::string text = epw([](int m, int d, int h) {
    if (m == 3 && d == 2 && h >= 5 && h <= 7) return record(m, d, h, "0", "99.9", "999", "999999");
    return record(m, d, h, "0", m == 3 && d == 2 && h > 7 ? "14.0" : "10.0", "50");
  });
  const auto year = read_epw(text).value();
  EXPECT_NEAR(year.hours[hour_of_year(date::March, date::day(2), 4)].temperature.value(), 11, 1e-12);
  EXPECT_NEAR(year.hours[hour_of_year(date::March, date::day(2), 6)].temperature.value(), 13, 1e-12);
  ASSERT_EQ(year.notes.size(), 2U);
  EXPECT_EQ(year.notes[0], "temperature missing in 3 of 8760 hours, bridged from those beside them: 2 Mar hours 5-7");
}

TEST(Epw, RowsThatAreNotThereAreBridgedOverTheNewYearToo) {
  const auto year = read_epw(epw([](int m, int d, int h) {
                      return (m == 1 && d == 1 && h < 3) || (m == 12 && d == 31 && h > 22) ? "" : steady(m, d, h);
                    })).value();
  EXPECT_EQ(year.hours[0].temperature, Celsius(10));
  EXPECT_EQ(year.notes.at(0), "temperature missing in 4 of 8760 hours, bridged from those beside them: 31 Dec hour 23 to 1 Jan hour 2");
}

TEST(Epw, MoreThanAFewHoursAreAnError) {
  EXPECT_EQ(error_of(with_hour(1, 1, 3, 8, "")), "");
  EXPECT_EQ(
      error_of(with_hour(1, 1, 3, 9, "")),
      "10:1: 7 of 8760 hours in a row are without temperature, from 1 Jan hour 3; expected a whole year with gaps of at most 6 hours");
  EXPECT_EQ(error_of(header),
            "8:1: no record follows the header; expected lines of 35 fields that begin with year, month, day, hour, minute");
}

TEST(Epw, FieldsMayBeMissingAtTheEnd) {
  std::string text = header;
  EXPECT_EQ(error_of(with_hour(1, 1, 2, 2, "2001,1,1,2,0,?9,10.0,0,50\n")), "");
  EXPECT_EQ(error_of(with_hour(1, 1, 2, 2, "2001,1,1,2,0,?9,10.0,0\n")), "10:1: 8 fields; expected 35, of which at least 9");
}

TEST(Epw, CarriageReturnsAByteOrderMarkAndMoreCommentLines) {
  std::string text = "\xEF\xBB\xBF";
  for (const char c : epw(steady)) text += c == '\n' ? "\r\n" : std::string(1, c);
  text.replace(text.find("COMMENTS 2,"), 11, "and on,\r\nCOMMENTS 2,");
  EXPECT_EQ(error_of(text), "");
}

TEST(Epw, EveryErrorNamesItsPlaceAndWhatWasExpected) {
  EXPECT_EQ(error_of(""), "1:1: no line LOCATION comes before the first record; expected one with place, hours from UTC and elevation");
  EXPECT_EQ(error_of("LOCATION,x\n"), "1:1: the hours from UTC, field 9 of LOCATION, are ''; expected -14 to 14");
  EXPECT_EQ(error_of("LOCATION,a,b,c,d,e,1,2,east,3\n"), "1:24: the hours from UTC, field 9 of LOCATION, are 'east'; expected -14 to 14");
  EXPECT_EQ(error_of(header.substr(0, header.find("DATA"))),
            "7:1: no record follows the header; expected lines of 35 fields that begin with year, month, day, hour, minute");
  EXPECT_EQ(error_of(with_hour(1, 1, 2, 2, record(13, 1, 2, "0", "10", "50"))),
            "10:6: the month, field 2, is '13'; expected a whole number from 1 to 12");
  EXPECT_EQ(error_of(with_hour(1, 1, 2, 2, record(1, 1, 2, "61", "10", "50"))),
            "10:12: the minute, field 5, is '61'; expected a whole number from 0 to 60");
  EXPECT_EQ(error_of(with_hour(1, 1, 2, 2, record(1, 1, 2, "0", "88", "50"))),
            "10:17: the dry-bulb temperature, field 7, is '88'; expected -70 to 70 °C, or 99.9 where it is missing");
  EXPECT_EQ(error_of(with_hour(1, 1, 2, 2, record(1, 1, 2, "0", "10", "-1"))),
            "10:25: the relative humidity, field 9, is '-1'; expected 0 to 110 %, or 999 where it is missing");
  EXPECT_EQ(error_of(with_hour(1, 1, 2, 2, record(1, 1, 2, "0", "10", "50", "83"))),
            "10:28: the pressure, field 10, is '83'; expected 31000 to 120000 Pa, or 999999 where it is missing");
  EXPECT_EQ(error_of(with_hour(1, 1, 2, 2, record(2, 30, 2, "0", "10", "50"))), "10:1: month 2 has no day 30");
  EXPECT_EQ(error_of(with_hour(1, 1, 2, 2, record(1, 1, 1, "0", "10", "50"))),
            "10:1: month 1, day 1, hour 1 again; it was given in line 9");
}

TEST(Epw, IsToldFromATableByContent) {
  EXPECT_EQ(OutdoorYear::parse(epw(steady), "file").value().describe(Units::metric), "outdoor air of 2001, Some Town");
  std::string typical = epw(steady), spread = epw([](int m, int d, int h) {
                                       std::string line = steady(m, d, h);
                                       return line.replace(0, 4, m < 7 ? "1999" : "2004");
                                     });
  typical.replace(typical.find("made up"), 7, "TMY3");
  EXPECT_EQ(OutdoorYear::parse(typical, "file").value().describe(Units::metric), "outdoor air of a typical year, Some Town");
  EXPECT_EQ(OutdoorYear::parse(spread, "file").value().describe(Units::metric), "outdoor air of 1999 to 2004, Some Town");
  EXPECT_TRUE(is_epw("\xEF\xBB\xBFLocation,x"));
  EXPECT_FALSE(is_epw("month,day,hour"));
}

/// The file's dew points are not read: computed ones differ from them by more than 1.5 K in some hours, and are consistent.
TEST(Epw, DewPointFollowsFromTemperatureAndHumidity) {
  const auto year = OutdoorYear::parse(sample_text("chicago.epw"), "x").value();
  const Instant start = date::sys_days(date::year(2027) / 1 / 1);
  const AirSeries series(year, start, start + std::chrono::hours(24 * 365));
  for (const AirRow& row : series.rows()) {
    ASSERT_NEAR(saturation_pressure(row.dew_point) / vapour_pressure(row.air), 1, 1e-8);
    ASSERT_LE(row.dew_point.value(), row.air.temperature.value() + 1e-9);
  }
}

TEST(Epw, AYearIsReadInTensOfMilliseconds) {
  const std::string text = sample_text("chicago.epw");
  const auto begun = std::chrono::steady_clock::now();
  EXPECT_TRUE(read_epw(text));
  const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begun;
  RecordProperty("milliseconds", std::to_string(took.count()));
  EXPECT_LT(took.count(), 2000) << "on a busy machine, with every check of the compiler";
}

RC_GTEST_PROP(Epw, AnyBytesGiveAYearOrAnError, ()) {
  const auto bytes = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
  for (const auto& text : {bytes, "LOCATION," + bytes, header + bytes, header + "2001,1,1,1,0,?9," + bytes}) {
    const auto year = read_epw(text);
    RC_ASSERT(!year && year.error().line >= 1 && year.error().column >= 1 && !year.error().message.empty());
  }
}

}  // namespace
}  // namespace coatday::climate
