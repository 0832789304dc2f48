// Laws that hold for all moist air. Published values: tests/published/psychrometrics_test.cpp.

#include "climate/psychrometrics.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <cmath>
#include <stdexcept>

namespace coatday::climate {
namespace {

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1'000'001) / 1e6; }
Air any_air() { return {Celsius(between(-40, 45)), RelativeHumidity(between(0.01, 1))}; }
Pascals any_pressure() { return Pascals(between(60'000, 105'000)); }

RC_GTEST_PROP(Psychrometrics, DewPointToWetBulbToDryBulb, ()) {
  const Air air = any_air();
  const Celsius bulb = wet_bulb(air, any_pressure());
  RC_ASSERT(dew_point(air).value() <= bulb.value() + 1e-6);
  RC_ASSERT(bulb.value() <= air.temperature.value() + 1e-6);
}

RC_GTEST_PROP(Psychrometrics, AirAtItsDewPointIsSaturated, ()) {
  const Air air = any_air();
  const double saturated = saturation_pressure(dew_point(air)).value(), vapour = vapour_pressure(air).value();
  RC_ASSERT(std::abs(saturated - vapour) < 1e-4 * vapour);  // eqs 5 and 6 leave a gap of 1e-4 at 0 °C
}

RC_GTEST_PROP(Psychrometrics, DamperAirHasAHigherWetBulbAndDewPoint, ()) {
  const Air dry = any_air();
  const Air damp{dry.temperature, RelativeHumidity(dry.humidity.value() + between(1e-6, 0.2))};
  RC_PRE(damp.humidity < RelativeHumidity(1));
  const Pascals pressure = any_pressure();
  RC_ASSERT(dew_point(dry).value() <= dew_point(damp).value());
  RC_ASSERT(wet_bulb(dry, pressure).value() <= wet_bulb(damp, pressure).value() + 1e-9);
}

RC_GTEST_PROP(Psychrometrics, HumidityRatioAndRelativeHumidityAreInverse, ()) {
  const Air air = any_air();
  const Pascals pressure = any_pressure();
  const auto humidity = relative_humidity(air.temperature, humidity_ratio(air, pressure), pressure);
  RC_ASSERT(std::abs(humidity.value() - air.humidity.value()) < 1e-12);
}

RC_GTEST_PROP(Psychrometrics, SaturationPressureRises, ()) {
  const double t = between(-100, 199);
  RC_ASSERT(saturation_pressure(Celsius(t)) < saturation_pressure(Celsius(t + between(1e-6, 1))));
}

TEST(Psychrometrics, SaturatedAirHasOneTemperature) {
  for (const double t : {-30.0, -5.0, 0.5, 20.0, 40.0}) {
    const Air air{Celsius(t), RelativeHumidity(1)};
    EXPECT_NEAR(dew_point(air).value(), t, 1e-8);
    EXPECT_NEAR(wet_bulb(air).value(), t, 1e-8);
  }
}

TEST(Psychrometrics, WarmingAtConstantHumidityRatioLowersRelativeHumidity) {
  const Air outdoors{Celsius(-5), RelativeHumidity(0.8)};
  const auto warm = relative_humidity(Celsius(20), humidity_ratio(outdoors));
  EXPECT_NEAR(warm.value(), 0.8 * saturation_pressure(Celsius(-5)) / saturation_pressure(Celsius(20)), 1e-12);
  EXPECT_NEAR(dew_point({Celsius(20), warm}).value(), dew_point(outdoors).value(), 1e-8);
}

TEST(Psychrometrics, ReturnsTheWetBulbWhereAnIcyOneIsPossibleToo) {
  // At 5 °C the wet equation starts at 0 °C with less water than the icy one ends with: both have a solution in between.
  double humidity = 0.2;
  while (wet_bulb({Celsius(5), RelativeHumidity(humidity)}) < Celsius(0)) humidity += 1e-6;
  const Celsius icy = wet_bulb({Celsius(5), RelativeHumidity(humidity - 2e-6)}), wet = wet_bulb({Celsius(5), RelativeHumidity(humidity)});
  EXPECT_NEAR(wet.value(), 0, 1e-4);
  EXPECT_LT(icy, Celsius(-0.1));
  EXPECT_GT(icy, Celsius(-0.4));
}

TEST(Psychrometrics, DryAirHasNoDewPointButAWetBulb) {
  const Air dry{Celsius(30), RelativeHumidity(0)};
  EXPECT_THROW((void)dew_point(dry), std::domain_error);
  EXPECT_LT(wet_bulb(dry), Celsius(15));
}

}  // namespace
}  // namespace coatday::climate
