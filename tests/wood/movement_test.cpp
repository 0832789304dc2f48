// Published values: tests/published/wood_test.cpp.

#include "wood/movement.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coatday::wood {
namespace {

MoistureContent percent(double value) { return MoistureContent(value / 100); }

TEST(Movement, FlatIsTangentialQuarterIsRadial) {
  for (const Species& s : all_species()) {
    EXPECT_DOUBLE_EQ(coefficient_across(s, flat_cut), s.tangential) << s.id;
    EXPECT_NEAR(coefficient_across(s, quarter_cut), s.radial, 1e-15) << s.id;
    EXPECT_NEAR(coefficient_across(s, RingAngle(45)), (s.radial + s.tangential) / 2, 1e-15) << s.id;
  }
}

RC_GTEST_PROP(Movement, SteeperRingsMoveLess, ()) {
  const Species& oak = *find_species("red-oak");
  const int degrees = *rc::gen::inRange(0, 90);
  RC_ASSERT(coefficient_across(oak, RingAngle(degrees + 1)) < coefficient_across(oak, RingAngle(degrees)));
}

TEST(Movement, OutsideItsRangeItIsRefused) {
  const Metres width(0.5);
  EXPECT_TRUE(movement(width, 0.003, percent(6), percent(14)).has_value());
  EXPECT_FALSE(movement(width, 0.003, percent(5.9), percent(8)).has_value());
  EXPECT_EQ(movement(width, 0.003, percent(8), percent(14.5)).error(),
            "14.5 % of moisture is outside the 6 to 14 % in which the handbook's coefficients hold");
}

TEST(Movement, ReachOfTheTable) {
  EXPECT_TRUE(in_moisture_table({Celsius((30 - 32) / 1.8), RelativeHumidity(0.05)}));
  EXPECT_TRUE(in_moisture_table({Celsius(20), RelativeHumidity(0.95)}));
  EXPECT_FALSE(in_moisture_table({Celsius(-2), RelativeHumidity(0.5)}));
  EXPECT_FALSE(in_moisture_table({Celsius(20), RelativeHumidity(0.96)}));
  EXPECT_FALSE(in_moisture_table({Celsius(20), RelativeHumidity(0.04)}));
}

}  // namespace
}  // namespace coatday::wood
