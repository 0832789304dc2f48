#include "finish/application_limits.h"

#include <gtest/gtest.h>

#include "tests/finish/samples.h"

namespace coatday::finish {
namespace {

using namespace std::chrono_literals;
using climate::Air;
using test::air;
using test::constant;
using test::monday;
using test::series;

/// What is said of an hour's coat in this air.
std::string said(const Product& p, Air a, Units units = Units::metric) {
  return limit_exceeded(p, series(constant(2, a)), monday, monday + 1h, units).value_or("");
}

TEST(LimitExceeded, SaysNothingInGoodAir) { EXPECT_EQ(said(test::product(Mechanism::water), air(20, 50)), ""); }

TEST(LimitExceeded, NamesTheBrokenLimit) {
  const Product p = test::product(Mechanism::water);
  EXPECT_EQ(said(p, air(9, 50)), "9 °C is below its limit of 10 °C");
  EXPECT_EQ(said(p, air(9.96, 50)), "9.96 °C is below its limit of 10.00 °C");
  EXPECT_EQ(said(p, air(34, 40)), "34 °C is above its limit of 32 °C");
  EXPECT_EQ(said(p, air(20, 85.4)), "85.4 % RH is above its limit of 85.0 % RH");
  EXPECT_EQ(said(p, air(20, 84)), "the air is 2.8 K above its dew point, it needs 3.0 K");
}

TEST(LimitExceeded, SpeaksInTheUsersUnits) {
  const Product p = test::product(Mechanism::water);
  EXPECT_EQ(said(p, air(9, 50), Units::us), "48 °F is below its limit of 50 °F");
  EXPECT_EQ(said(p, air(20, 84), Units::us), "the air is 5.0 °F above its dew point, it needs 5.4 °F");
}

TEST(LimitExceeded, AcceptsAirAtTheLimitItself) {
  Product p = test::product(Mechanism::water);
  EXPECT_EQ(said(p, air(10, 50)), "");
  EXPECT_EQ(said(p, air(32, 50)), "");
  p.limits.dew_point_margin = Kelvins(0);
  EXPECT_EQ(said(p, air(20, 85)), "");
}

TEST(LimitExceeded, BlushesNearTheDewPoint) {
  Product p = test::product(Mechanism::lacquer_thinner);
  p.limits.blush_margin = Kelvins(5.5);
  p.limits.blush_warning = Kelvins(8);
  EXPECT_EQ(said(p, air(22, 74)), "the air is 4.8 K above its dew point, the coat blushes under 5.5 K");
  EXPECT_EQ(said(p, air(22, 65)), "");
  EXPECT_EQ(blush_warning(p, series(constant(1, air(22, 65))), monday, monday + 1h),
            "the air is 7 K above its dew point, the coat may blush under 8 K");
  EXPECT_EQ(blush_warning(p, series(constant(1, air(22, 50))), monday, monday + 1h), std::nullopt);
}

TEST(LimitExceeded, LooksAtEveryRowThatTheCoatMeets) {
  const Product p = test::product(Mechanism::water);
  const auto cold_third_row = series({air(20, 50), air(20, 50), air(8, 50), air(20, 50)});
  EXPECT_EQ(limit_exceeded(p, cold_third_row, monday, monday + 1h), std::nullopt);
  EXPECT_TRUE(limit_exceeded(p, cold_third_row, monday, monday + 1h + 1s));
  EXPECT_TRUE(limit_exceeded(p, cold_third_row, monday + 1h, monday + 1h));
  EXPECT_EQ(limit_exceeded(p, cold_third_row, monday + 90min, monday + 2h), std::nullopt);
}

// Wood Handbook FPL-GTR-190 ch. 16: latex needs at least 10 °C for 24 h after it went on.
TEST(LimitExceeded, HoldsTheTemperatureAfterTheCoat) {
  Product p = test::product(Mechanism::water);
  p.limits.hold = Hours(24);
  std::vector<Air> rows = constant(40, air(20, 50));
  rows[50] = air(7, 50);
  EXPECT_EQ(limit_exceeded(p, series(rows), monday, monday + 1h), std::nullopt);
  EXPECT_EQ(limit_exceeded(p, series(rows), monday, monday + 1h + 1s), "7 °C within 1 day of the coat is below its limit of 10 °C");
  EXPECT_EQ(limit_exceeded(p, series(rows), monday + 15h + 30min, monday + 16h),
            "7 °C within 1 day of the coat is below its limit of 10 °C");
  rows[49] = air(9.99, 50);
  EXPECT_EQ(limit_exceeded(p, series(rows), monday + 15h + 30min, monday + 16h),
            "7 °C within 1 day of the coat is below its limit of 10 °C")
      << "how cold it gets, not how it begins";
}

TEST(LimitExceeded, RefusesAirThatNobodyKnows) {
  Product p = test::product(Mechanism::water);
  const auto two_hours = series(constant(2, air(20, 50)));
  EXPECT_EQ(limit_exceeded(p, two_hours, monday, monday + 2h), std::nullopt);
  EXPECT_EQ(limit_exceeded(p, two_hours, monday, monday + 3h), "the air is not known for so long");
  EXPECT_EQ(limit_exceeded(p, two_hours, monday - 1h, monday + 1h), "the air is not known for so long");
  p.limits.hold = Hours(4);
  EXPECT_EQ(limit_exceeded(p, two_hours, monday, monday + 1h), "the air is not known for so long");
}

TEST(LimitExceeded, HoldsTheTemperatureWhileTheCoatGoesOnToo) {
  Product p = test::product(Mechanism::water);
  p.limits.coldest = Celsius(8);
  p.limits.hold = Hours(1);
  const auto air = series({test::air(9, 50), test::air(20, 50), test::air(20, 50), test::air(20, 50)});
  EXPECT_EQ(limit_exceeded(p, air, monday, monday + 30min), "9 °C within 1 h of the coat is below its limit of 10 °C");
  EXPECT_EQ(allowed_rows(p, air), (std::vector<bool>{false, true, false, false}));
}

TEST(AllowedRows, CountTheHoldFromTheRowsEnd) {
  Product p = test::product(Mechanism::water);
  p.limits.hold = Hours(1);
  const auto cold_last_but_one = series({air(20, 50), air(20, 50), air(20, 50), air(20, 50), air(9, 50), air(20, 50)});
  EXPECT_EQ(allowed_rows(p, cold_last_but_one), (std::vector<bool>{true, true, false, false, false, false}));
  p.limits.hold = Hours(0);
  EXPECT_EQ(allowed_rows(p, cold_last_but_one), (std::vector<bool>{true, true, true, true, false, true}));
}

}  // namespace
}  // namespace coatday::finish
