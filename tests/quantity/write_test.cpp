#include <gtest/gtest.h>

#include "quantity/text.h"

namespace coatday {
namespace {

constexpr double inch = 0.0254;

TEST(FormatLength, UsesMixedFractions) {
  EXPECT_EQ(format_length(Metres(68 * inch), Units::us), "68 in");
  EXPECT_EQ(format_length(Metres(2.125 * inch), Units::us), "2 1/8 in");
  EXPECT_EQ(format_length(Metres(0.5 * inch), Units::us), "1/2 in");
  EXPECT_EQ(format_length(Metres(11.0 / 16 * inch), Units::us), "11/16 in");
  EXPECT_EQ(format_length(Metres(2.99 * inch), Units::us), "3 in");  // 2.99 is nearest 48/16
  EXPECT_EQ(format_length(Metres(-2.125 * inch), Units::us), "-2 1/8 in");
}

TEST(FormatLength, ShowsWhatASixteenthWouldHide) {
  EXPECT_EQ(format_length(Metres(inch / 16), Units::us), "1/16 in");
  EXPECT_EQ(format_length(Metres(0.02 * inch), Units::us), "0.02 in");
  EXPECT_EQ(format_length(Metres(0.21 * inch), Units::us), "0.21 in");
}

TEST(FormatLength, Metric) {
  EXPECT_EQ(format_length(Metres(1.727), Units::metric), "1727 mm");
  EXPECT_EQ(format_length(Metres(0.038), Units::metric), "38 mm");
  EXPECT_EQ(format_length(Metres(0.0024), Units::metric), "2.4 mm");
  EXPECT_EQ(format_length(Metres(0.00025), Units::metric), "0.25 mm");
}

TEST(FormatArea, ChoosesAReadableUnit) {
  EXPECT_EQ(format_area(SquareMetres(1.24), Units::metric), "1.24 m²");
  EXPECT_EQ(format_area(SquareMetres(1.24), Units::us), "13.3 ft²");
  EXPECT_EQ(format_area(SquareMetres(0.0012), Units::metric), "12 cm²");
  EXPECT_EQ(format_area(SquareMetres(0.0129032), Units::us), "20 in²");
  EXPECT_EQ(format_area(SquareMetres(0), Units::us), "0 ft²");
}

TEST(FormatVolume, ChoosesAReadableUnit) {
  EXPECT_EQ(format_volume(Litres(0.25), Units::metric), "250 ml");
  EXPECT_EQ(format_volume(Litres(1.24), Units::metric), "1.2 l");
  EXPECT_EQ(format_volume(Litres(0.9996), Units::metric), "1 l");
  EXPECT_EQ(format_volume(*parse_volume("8 fl oz"), Units::us), "8 fl oz");
  EXPECT_EQ(format_volume(*parse_volume("1.3 qt"), Units::us), "1.3 qt");
  EXPECT_EQ(format_volume(*parse_volume("2 gal"), Units::us), "2 gal");
}

TEST(Format, OtherQuantities) {
  EXPECT_EQ(format_spreading_rate(SquareMetresPerLitre(10), Units::metric), "10 m²/l");
  EXPECT_EQ(format_spreading_rate(*parse_spreading_rate("400 ft2/gal"), Units::us), "400 ft²/gal");
  EXPECT_EQ(format_temperature(Celsius(19), Units::metric), "19 °C");
  EXPECT_EQ(format_temperature(Celsius(19), Units::us), "66 °F");
  EXPECT_EQ(format_humidity(RelativeHumidity(0.22)), "22 % RH");
  EXPECT_EQ(format_airflow(CubicMetresPerHour(34.1), Units::metric), "35 m³/h");  // what is needed is rounded up
  EXPECT_EQ(format_airflow(*parse_airflow("500 cfm"), Units::us), "500 cfm");
  EXPECT_EQ(format_film(Micrometres(38.1), Units::metric), "38 µm");
  EXPECT_EQ(format_film(Micrometres(38.1), Units::us), "1.5 mil");
}

TEST(Format, NeverWritesMinusZero) {
  EXPECT_EQ(format_temperature(Celsius(-0.2), Units::metric), "0 °C");
  EXPECT_EQ(format_temperature(Celsius(-17.8), Units::us), "0 °F");
  EXPECT_EQ(format_length(Metres(-1e-7), Units::us), "0 in");
  EXPECT_EQ(format_length(Metres(-1e-7), Units::metric), "0 mm");
  EXPECT_EQ(format_area(SquareMetres(-1e-9), Units::metric), "0 cm²");
  EXPECT_EQ(format_volume(Litres(-1e-9), Units::us), "0 fl oz");
  EXPECT_EQ(format_span(Hours(-1e-9)), "0 min");
  EXPECT_EQ(format_hours_minutes(Minutes(0)), "0:00");
}

TEST(FormatSpan, WritesTheTwoLargestUnits) {
  EXPECT_EQ(format_span(Minutes(35)), "35 min");
  EXPECT_EQ(format_span(Minutes(150)), "2 h 30 min");
  EXPECT_EQ(format_span(Hours(2)), "2 h");
  EXPECT_EQ(format_span(Hours(76)), "3 days 4 h");
  EXPECT_EQ(format_span(Hours(24)), "1 day");
  EXPECT_EQ(format_span(Hours(23.9999)), "1 day");
  EXPECT_EQ(format_span(Hours(0.9999)), "1 h");
  EXPECT_EQ(format_span(std::chrono::seconds(30)), "30 s");
  EXPECT_EQ(format_span(Hours(0)), "0 min");
  EXPECT_EQ(format_span(Minutes(-90)), "-1 h 30 min");
}

TEST(FormatHoursMinutes, PadsTheMinutes) {
  EXPECT_EQ(format_hours_minutes(Minutes(50)), "0:50");
  EXPECT_EQ(format_hours_minutes(Minutes(725)), "12:05");
  EXPECT_EQ(format_hours_minutes(Minutes(-50)), "-0:50");
}

}  // namespace
}  // namespace coatday
