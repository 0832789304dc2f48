// Every way of writing a quantity that is accepted.
#include <gtest/gtest.h>

#include <cmath>

#include "quantity/text.h"

namespace coatday {
namespace {

constexpr double inch = 0.0254;

struct Length {
  const char* text;
  double inches;
};

TEST(ParseLength, ReadsInchesAndFeet) {
  constexpr Length cases[] = {
      {"2 1/8 in", 2.125},
      {"2-1/8 in", 2.125},
      {"2-1/8\"", 2.125},
      {"1/2 in", 0.5},
      {"24\"", 24},
      {"68 in", 68},
      {"68in", 68},
      {"  68   in ", 68},
      {"0.75 inches", 0.75},
      {".75 inch", 0.75},
      {"5' 8\"", 68},
      {"5'8\"", 68},
      {"5'-8\"", 68},
      {"5'-8 1/2\"", 68.5},
      {"5 ft 8 in", 68},
      {"5 ft 8 1/2 in", 68.5},
      {"5 feet 8 inches", 68},
      {"1 foot", 12},
      {"6 ft", 72},
      {"6'", 72},
      {"5 ft 0 in", 60},
      {"2 ½ in", 2.5},
      {"2½\"", 2.5},
      {"5′ 8″", 68},
      {"5’ 8”", 68},
      {"012 in", 12},
      {"5' 8''", 68},
      {"9/8 in", 1.125},
      {"0 ft 8 in", 8},
      {"1 / 2 in", 0.5},
  };
  for (const auto& [text, inches] : cases) {
    const auto length = parse_length(text);
    ASSERT_TRUE(length) << text << ": " << length.error();
    EXPECT_NEAR(length->value(), inches * inch, 1e-15) << text;
  }
}

TEST(ParseLength, ReadsMetricLengths) {
  EXPECT_EQ(parse_length("170 cm"), Metres(1.7));
  EXPECT_EQ(parse_length("38 mm"), Metres(0.038));
  EXPECT_EQ(parse_length("1.2 m"), Metres(1.2));
  EXPECT_EQ(parse_length("38\u00a0mm"), Metres(0.038));  // no-break space
  EXPECT_EQ(parse_length("1 m 20 cm"), Metres(1.2));
  EXPECT_EQ(parse_length("100 m"), Metres(100));
}

TEST(ParseArea, Accepts) {
  EXPECT_EQ(parse_area("0.8 m2"), SquareMetres(0.8));
  EXPECT_EQ(parse_area("0.8 m²"), SquareMetres(0.8));
  EXPECT_EQ(parse_area("900 cm2"), SquareMetres(0.09));
  EXPECT_EQ(parse_area("4 sq ft"), parse_area("4 ft²"));
  EXPECT_EQ(parse_area("1 1/2 ft2"), parse_area("1.5 ft2"));
}

TEST(ParseVolume, Accepts) {
  EXPECT_EQ(parse_volume("250 ml"), Litres(0.25));
  EXPECT_EQ(parse_volume("250 mL"), Litres(0.25));
  EXPECT_EQ(parse_volume("1 L"), Litres(1));
  EXPECT_EQ(parse_volume("1.5 litres"), Litres(1.5));
  EXPECT_EQ(parse_volume("1/2 gal"), parse_volume("2 quarts"));
  EXPECT_EQ(parse_volume("8 fl oz"), parse_volume("1/2 pint"));
}

TEST(ParseRates, Accept) {
  EXPECT_EQ(parse_spreading_rate("10 m2/l"), SquareMetresPerLitre(10));
  EXPECT_EQ(parse_spreading_rate("10 m² / L"), SquareMetresPerLitre(10));
  EXPECT_EQ(parse_spreading_rate("400 ft2/gal"), parse_spreading_rate("400 sq ft/gal"));
  EXPECT_EQ(parse_work_rate("6 m²/h"), SquareMetresPerHour(6));
}

TEST(ParseFilm, Accepts) {
  EXPECT_EQ(parse_film("40 um"), Micrometres(40));
  EXPECT_EQ(parse_film("40 \u00b5m"), Micrometres(40));  // micro sign
  EXPECT_EQ(parse_film("40 \u03bcm"), Micrometres(40));  // Greek mu
  EXPECT_EQ(parse_film("2 mils"), Micrometres(50.8));
}

TEST(ParseVoc, AcceptsZero) {
  EXPECT_EQ(parse_voc("0 g/l"), GramsPerLitre(0));
  EXPECT_EQ(parse_voc("350 g/L"), GramsPerLitre(350));
}

TEST(ParseAirflow, Accepts) {
  EXPECT_EQ(parse_airflow("850 m3/h"), CubicMetresPerHour(850));
  EXPECT_EQ(parse_airflow("850 m³/h"), CubicMetresPerHour(850));
  EXPECT_EQ(parse_airflow("100 l/s"), CubicMetresPerHour(360));
  EXPECT_EQ(parse_airflow("500 ft3/min"), parse_airflow("500 cfm"));
}

TEST(ParseRoom, VolumeWaterAndPower) {
  EXPECT_EQ(parse_room_volume("150 m³"), CubicMetres(150));
  EXPECT_NEAR(parse_room_volume("1000 ft3")->value(), 28.316846592, 1e-9);  // NIST Handbook 44, appendix C
  EXPECT_EQ(parse_water_rate("100 g/h"), KilogramsPerHour(0.1));
  EXPECT_EQ(parse_water_rate("12 l/day"), KilogramsPerHour(0.5));
  EXPECT_NEAR(parse_water_rate("24 pt/day")->value(), 0.473176473, 1e-9);
  EXPECT_EQ(parse_power("5000 W"), Kilowatts(5));
  EXPECT_NEAR(parse_power("10000 BTU/h")->value(), 2.930711, 1e-9);  // NIST SP 811, appendix B
}

TEST(ParseDensity, Accepts) {
  EXPECT_EQ(parse_density("0.867 kg/l"), GramsPerLitre(867));
  EXPECT_EQ(parse_density("867 g/l"), GramsPerLitre(867));
}

TEST(ParseVapour, Accepts) { EXPECT_EQ(parse_vapour("227 l/l"), CubicMetresPerLitre(0.227)); }

TEST(ParseTemperature, Accepts) {
  for (const char* text : {"18 °C", "18 C", "18°C", "18C", "18.0 °C"}) EXPECT_EQ(parse_temperature(text), Celsius(18)) << text;
  for (const char* text : {"50 °F", "50 F", "50F"}) EXPECT_EQ(parse_temperature(text), Celsius(10)) << text;
  EXPECT_EQ(parse_temperature("−5 °C"), Celsius(-5));  // minus sign
  EXPECT_EQ(parse_temperature("-5 °C"), Celsius(-5));  // hyphen
}

TEST(ParseTemperatureDifference, HasNoOffset) {
  EXPECT_EQ(parse_temperature_difference("3 K"), Kelvins(3));
  EXPECT_EQ(parse_temperature_difference("9 °F"), Kelvins(5));
  EXPECT_EQ(parse_temperature_difference("-2 °C"), Kelvins(-2));
}

TEST(ParseDuration, Accepts) {
  EXPECT_EQ(parse_duration("2 h 30 min"), Hours(2.5));
  EXPECT_EQ(parse_duration("3 days"), Hours(72));
  EXPECT_EQ(parse_duration("1 day 4 h"), Hours(28));
  EXPECT_EQ(parse_duration("1 d 4 h"), Hours(28));
  EXPECT_EQ(parse_duration("2 weeks 3 days"), Hours(408));
  EXPECT_EQ(parse_duration("90 min"), Hours(1.5));
  EXPECT_EQ(parse_duration("30 s"), Hours(30.0 / 3600));
  EXPECT_EQ(parse_duration("0 min"), Hours(0));
  EXPECT_EQ(parse_duration("1/2 h"), Hours(0.5));
  EXPECT_EQ(parse_duration("1.5h"), Hours(1.5));
}

TEST(ParseNumber, Accepts) {
  EXPECT_EQ(parse_number("12"), 12);
  EXPECT_EQ(parse_number("-0.5"), -0.5);
  EXPECT_EQ(parse_number("012"), 12);  // decimal, not octal
  EXPECT_FALSE(std::signbit(*parse_number("-0")));
  EXPECT_EQ(parse_count("010"), 10);
  EXPECT_EQ(parse_count("0"), 0);
}

TEST(ParseShare, AcceptsPercentAndFraction) {
  EXPECT_EQ(parse_share("65 %"), 0.65);
  EXPECT_EQ(parse_share("65%"), 0.65);
  EXPECT_EQ(parse_share("0.65"), 0.65);
  EXPECT_EQ(parse_share("100 %"), 1);
  EXPECT_EQ(parse_share("0"), 0);
}

}  // namespace
}  // namespace coatday
