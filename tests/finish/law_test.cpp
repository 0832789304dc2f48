#include "finish/law.h"

#include <gtest/gtest.h>

#include <cmath>

#include "climate/psychrometrics.h"
#include "tests/finish/samples.h"

namespace coatday::finish {
namespace {

using test::air;

std::vector<Law> every_default() {
  std::vector<Law> laws;
  for (std::size_t m = 0; m < words<Mechanism>().size(); ++m) {
    for (const Clock clock : {Clock::drying, Clock::cure}) {
      if (const auto law = default_law(static_cast<Mechanism>(m), clock)) laws.push_back(*law);
    }
  }
  return laws;
}

Law of(Mechanism mechanism, Clock clock) { return default_law(mechanism, clock).value(); }
double at(const Law& law, climate::Air a) { return rate(law, a, reference_air); }

TEST(Law, EveryClassHasBothClocksButHeatCuredPaint) {
  EXPECT_EQ(every_default().size(), 2 * words<Mechanism>().size() - 1);
  EXPECT_TRUE(default_law(Mechanism::heat_cured, Clock::drying));
  EXPECT_FALSE(default_law(Mechanism::heat_cured, Clock::cure));
}

TEST(Law, EveryDefaultHasASourceAndARange) {
  for (const Law& law : every_default()) {
    EXPECT_FALSE(law.source.empty());
    EXPECT_LT(law.no_credit_below, law.hottest);
    EXPECT_GE(law.no_credit_below, Celsius(5));
    EXPECT_LE(law.hottest, Celsius(38));
  }
}

TEST(Law, RunsAtOneInReferenceAir) {
  for (const Law& law : every_default()) {
    EXPECT_DOUBLE_EQ(at(law, reference_air), 1) << law.source;
    EXPECT_DOUBLE_EQ(rate(law, air(18, 60), air(18, 60)), 1) << law.source;
  }
}

TEST(Law, GivesNoCreditBelowItsFloor) {
  for (const Law& law : every_default()) {
    const double floor = law.no_credit_below.value();
    EXPECT_EQ(at(law, air(floor - 0.01, 50)), 0) << law.source;
    EXPECT_GT(at(law, air(floor, 50)), 0) << law.source;
  }
}

TEST(Law, RunsNoFasterAboveItsRange) {
  for (const Law& law : every_default()) {
    const double top = law.hottest.value();
    EXPECT_DOUBLE_EQ(at(law, air(top + 15, 50)), at(law, air(top, 50))) << law.source;
    EXPECT_GT(rate(law, air(top + 15, 50), reference_air, Side::fast), at(law, air(top, 50))) << law.source;
  }
}

TEST(Law, FastSideIsNeverSlower) {
  for (const Law& law : every_default()) {
    for (double t = 0; t <= 45; t += 5) {
      for (double rh = 5; rh <= 100; rh += 5) EXPECT_GE(rate(law, air(t, rh), reference_air, Side::fast), at(law, air(t, rh)));
    }
  }
}

TEST(Law, ArrheniusFollowsItsFormula) {
  const Law law = of(Mechanism::polyurethane_two_part, Clock::cure);
  const double expected = std::exp(50 / 8.31446261815324e-3 * (1 / 296.15 - 1 / 291.15));
  EXPECT_NEAR(at(law, air(18, 50)), expected, 1e-12);
  EXPECT_EQ(at(law, air(18, 50)), at(law, air(18, 95)));  // humidity is no part of it
}

TEST(Law, WaterLeavesIntoTheVapourDeficit) {
  Law law = of(Mechanism::water, Clock::drying);
  law.wet_bulb_share = 0;  // a film at air temperature: the deficit itself
  const auto deficit = [](climate::Air a) { return climate::saturation_pressure(a.temperature).value() * (1 - a.humidity.value()); };
  EXPECT_NEAR(at(law, air(18, 70)), deficit(air(18, 70)) / deficit(reference_air), 1e-12);
  law.wet_bulb_share = 1;
  const auto wet_deficit = [](climate::Air a) {
    return (climate::saturation_pressure(climate::wet_bulb(a)) - climate::vapour_pressure(a)).value();
  };
  EXPECT_NEAR(at(law, air(18, 70)), wet_deficit(air(18, 70)) / wet_deficit(reference_air), 1e-12);
}

TEST(Law, WaterStopsInDampAirAndIsCappedInDryAir) {
  const Law law = of(Mechanism::water, Clock::drying);
  EXPECT_GT(at(law, air(23, 85)), 0);
  EXPECT_EQ(at(law, air(23, 85.1)), 0);
  EXPECT_DOUBLE_EQ(at(law, air(23, 5)), at(law, air(23, 20)));
  EXPECT_GT(rate(law, air(23, 5), reference_air, Side::fast), at(law, air(23, 20)));
}

TEST(Law, MoistureCureNeedsWaterInTheAir) {
  const Law law = of(Mechanism::moisture_cure, Clock::cure);
  EXPECT_EQ(at(law, air(23, 29.9)), 0);
  EXPECT_NEAR(at(law, air(23, 30)), 0.6, 1e-12);
  EXPECT_NEAR(at(law, air(23, 95)), 1.7, 1e-12);  // as at 85 %
}

TEST(Law, OnlyWaterCuresAfterItHasDried) {
  for (std::size_t m = 0; m < words<Mechanism>().size(); ++m) {
    const auto cure = default_law(static_cast<Mechanism>(m), Clock::cure);
    EXPECT_EQ(cure && cure->cure_starts_at_recoat, static_cast<Mechanism>(m) == Mechanism::water);
  }
}

TEST(Law, StandsStillWhereItsReferenceDoes) { EXPECT_EQ(rate(of(Mechanism::water, Clock::drying), reference_air, air(23, 100)), 0); }

// The table of the project's model, row by row: floor, range of temperature, range of humidity where the law needs one.
TEST(Law, HasTheRangesOfTheModel) {
  struct Row {
    Mechanism mechanism;
    Clock clock;
    double activation, floor, coldest, hottest, driest, dampest;
  };
  using enum Mechanism;
  for (const Row& r :
       {Row{water, Clock::drying, 0, 10, 10, 32, 0.20, 0.85}, Row{water, Clock::cure, 50, 10, 15, 30, 0, 1},
        Row{alcohol, Clock::drying, 27, 10, 10, 32, 0, 1}, Row{lacquer_thinner, Clock::drying, 37, 5, 5, 32, 0, 1},
        Row{white_spirit, Clock::drying, 47, 10, 10, 32, 0, 1}, Row{oxidative, Clock::drying, 50, 7, 10, 32, 0, 1},
        Row{oxidative, Clock::cure, 50, 7, 10, 32, 0, 1}, Row{epoxy, Clock::drying, 57, 10, 16, 38, 0, 1},
        Row{polyurethane_two_part, Clock::drying, 50, 10, 16, 38, 0, 1}, Row{acid_cured, Clock::drying, 65, 15, 18, 30, 0, 1},
        Row{moisture_cure, Clock::drying, 0, 10, 10, 32, 0.30, 0.85}, Row{cyanoacrylate, Clock::drying, 0, 15, 15, 30, 0.30, 0.85}}) {
    const Law law = of(r.mechanism, r.clock);
    EXPECT_EQ(law.activation.value(), r.activation) << word(r.mechanism);
    EXPECT_EQ(law.no_credit_below, Celsius(r.floor)) << word(r.mechanism);
    EXPECT_EQ(law.coldest, Celsius(r.coldest)) << word(r.mechanism);
    EXPECT_EQ(law.hottest, Celsius(r.hottest)) << word(r.mechanism);
    EXPECT_EQ(law.driest, RelativeHumidity(r.driest)) << word(r.mechanism);
    EXPECT_EQ(law.dampest, RelativeHumidity(r.dampest)) << word(r.mechanism);
  }
}

TEST(Law, SaysWhichLimitOfItsRangeAnAirIsBeyond) {
  const Law cure = of(Mechanism::water, Clock::cure);
  EXPECT_EQ(beyond(cure, air(15, 95)), std::nullopt);
  EXPECT_EQ(beyond(cure, air(12, 50)).value_or(""), "12 °C is below the law's range, 15 °C to 30 °C");
  EXPECT_EQ(beyond(cure, air(35, 50), Units::us).value_or(""), "95 °F is above the law's range, 59 °F to 86 °F");
  EXPECT_EQ(beyond(of(Mechanism::water, Clock::drying), air(20, 90)).value_or(""),
            "90 % RH is damper than the law's range, 20 % RH to 85 % RH");
}

TEST(Uncertainty, IsWiderOutsideUsualAir) {
  for (const climate::Air a : {air(15, 30), air(30, 70), air(23, 50)}) EXPECT_EQ(uncertainty(a), 1.4);
  for (const climate::Air a : {air(14.9, 50), air(30.1, 50), air(23, 29.9), air(23, 70.1)}) EXPECT_EQ(uncertainty(a), 2);
}

}  // namespace
}  // namespace coatday::finish
