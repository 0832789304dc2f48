// Laws. Published values: tests/published/wood_test.cpp.

#include "wood/moisture.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coatday::wood {
namespace {

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1'000'001) / 1e6; }
double moisture(double t, double humidity) { return equilibrium_moisture({Celsius(t), RelativeHumidity(humidity)}).value(); }

RC_GTEST_PROP(EquilibriumMoisture, DamperAirMakesDamperWood, ()) {
  const double t = between(-1, 50), humidity = between(0, 0.95);
  RC_ASSERT(moisture(t, humidity) < moisture(t, humidity + between(1e-4, 0.05)));
}

RC_GTEST_PROP(EquilibriumMoisture, WarmerAirAtTheSameHumidityMakesDrierWood, ()) {
  const double t = between(20, 50), humidity = between(0.1, 0.95);
  RC_ASSERT(moisture(t + 1, humidity) < moisture(t, humidity));
}

TEST(EquilibriumMoisture, DryAirDriesWoodOut) { EXPECT_EQ(moisture(20, 0), 0); }

TEST(EquilibriumMoisture, StaysBelowFibreSaturation) {
  EXPECT_GT(moisture(20, 1), 0.25);
  EXPECT_LT(moisture(20, 1), 0.32);
}

RC_GTEST_PROP(SizeAfter, NoChangeOfMoistureNoChangeOfSize, ()) {
  const Metres initial(between(0.01, 3));
  const MoistureContent moisture(between(0.06, 0.14));
  RC_ASSERT(size_after(initial, between(0.0007, 0.005), moisture, moisture) == initial);
}

TEST(SizeAfter, DryingShrinks) {
  const Metres narrow = size_after(Metres(0.5), 0.00274, MoistureContent(0.10), MoistureContent(0.06));
  EXPECT_NEAR(narrow.value(), 0.5 * (1 - 0.00274 * 4), 1e-12);
}

}  // namespace
}  // namespace coatday::wood
