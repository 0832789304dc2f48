// Conversions against published factors.
//   HB 44: NIST Handbook 44, Appendix C, General Tables of Units of Measurement, section 4 (exact values).
//   SP 811: NIST Special Publication 811 (2008 edition), Appendix B.8, quoted from memory
//   (seven digits, so half of the last digit is the tolerance).
#include <gtest/gtest.h>

#include "quantity/text.h"

namespace coatday {
namespace {

TEST(Conversion, LengthsAreExact) {
  EXPECT_EQ(parse_length("1 in")->value(), 0.0254);  // HB 44, units of length, international measure
  EXPECT_EQ(parse_length("1 ft")->value(), 0.3048);  // same table
  EXPECT_EQ(parse_length("100 in")->value(), 2.54);
  EXPECT_EQ(parse_length("38 mm")->value(), 0.038);
  EXPECT_EQ(parse_length("170 cm")->value(), 1.7);
}

TEST(Conversion, AreasAreExact) {
  EXPECT_EQ(parse_area("1 in2")->value(), 6.4516e-4);   // HB 44, units of area: 6.4516 square centimetres
  EXPECT_EQ(parse_area("1 ft2")->value(), 0.09290304);  // HB 44, units of area: 929.0304 square centimetres
  EXPECT_EQ(parse_area("144 in2")->value(), parse_area("1 sq ft")->value());
}

TEST(Conversion, VolumesAreExact) {
  EXPECT_EQ(parse_volume("1 gal")->value(), 3.785411784);  // HB 44, liquid volume measure
  EXPECT_EQ(parse_volume("1 qt")->value(), 0.946352946);   // same table
  EXPECT_EQ(parse_volume("1 pt")->value(), 0.473176473);   // same table
  EXPECT_EQ(parse_volume("128 fl oz")->value(), parse_volume("1 gal")->value());
  EXPECT_NEAR(parse_volume("1 fl oz")->value(), 0.02957353, 5e-9);  // SP 811, fluid ounce (U.S.): 2.957 353 E-05 m3
}

TEST(Conversion, AGallonIs231CubicInches) {
  const double inch = parse_length("1 in")->value();
  EXPECT_NEAR(parse_volume("1 gal")->value() / 1000, 231 * inch * inch * inch, 1e-17);  // HB 44, units of liquid volume
}

TEST(Conversion, FilmThickness) { EXPECT_EQ(parse_film("1 mil")->value(), 25.4); }  // SP 811, mil (0.001 in): 2.54 E-05 m

TEST(Conversion, VolatileContent) {
  EXPECT_NEAR(parse_airflow("1 cfm")->value() / 3600, 4.719474e-4, 5e-11);       // SP 811, cubic foot per minute: 4.719 474 E-04 m3/s
  EXPECT_NEAR(parse_vapour("1 ft3/gal")->value(), 0.02831685 / 3.785412, 1e-9);  // SP 811, cubic foot and gallon (U.S.)
  EXPECT_NEAR(parse_voc("1 lb/gal")->value(), 119.8264, 5e-5);                   // SP 811, pound per gallon (U.S.): 1.198 264 E+02 kg/m3
}

TEST(Conversion, RatesFollowFromTheirParts) {
  EXPECT_DOUBLE_EQ(parse_spreading_rate("1 ft2/gal")->value(), 0.09290304 / 3.785411784);  // HB 44, both exact
  EXPECT_DOUBLE_EQ(parse_work_rate("60 ft2/h")->value(), 60 * 0.09290304);
}

TEST(Conversion, Temperatures) {
  // SP 811, Appendix B.8: t/°C = (t/°F - 32)/1.8, and the fixed points that follow from it.
  EXPECT_EQ(parse_temperature("32 °F")->value(), 0);
  EXPECT_EQ(parse_temperature("212 °F")->value(), 100);
  EXPECT_EQ(parse_temperature("-40 °F")->value(), -40);
  EXPECT_EQ(parse_temperature("-40 °C")->value(), -40);
  EXPECT_EQ(parse_temperature_difference("9 °F")->value(), 5);  // SP 811: degree Fahrenheit (interval) = 1/1.8 K
}

TEST(Conversion, Durations) {
  EXPECT_EQ(parse_duration("90 min")->count(), 1.5);
  EXPECT_EQ(parse_duration("3600 s")->count(), 1);
  EXPECT_EQ(parse_duration("2 weeks")->count(), 336);
}

}  // namespace
}  // namespace coatday
