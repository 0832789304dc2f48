// The room where a piece will live.

#include "climate/customer_room.h"

#include <gtest/gtest.h>

#include "climate/psychrometrics.h"
#include "tests/climate/year.h"

namespace coatday::climate {
namespace {

TEST(MonthlyAir, FollowsItsMonthsInItsOwnZone) {
  std::array<Air, 12> months;
  months.fill({Celsius(20), RelativeHumidity(0.35)});
  for (std::size_t m = 4; m < 10; ++m) months[m] = {Celsius(24), RelativeHumidity(0.55)};
  const auto zone = Zone::find("America/Chicago");
  ASSERT_TRUE(zone);
  const MonthlyAir air(months, *zone);
  const Instant turn = zone->to_instant(LocalTime(LocalDay(date::year(2028) / 5 / 1)));
  EXPECT_EQ(air.at(turn - std::chrono::seconds(1)).humidity, RelativeHumidity(0.35));
  EXPECT_EQ(air.at(turn).humidity, RelativeHumidity(0.55));
  EXPECT_EQ(air.describe(Units::metric), "24 °C, 55 % RH in May to October; 20 °C, 35 % RH in November to April");
  months.fill({Celsius(20), RelativeHumidity(0.4)});
  EXPECT_EQ(MonthlyAir(months, *zone).describe(Units::metric), "20 °C, 40 % RH all year");
  months[6] = {Celsius(25), RelativeHumidity(0.5)};
  EXPECT_EQ(MonthlyAir(months, *zone).describe(Units::metric), "25 °C, 50 % RH in July; 20 °C, 40 % RH in August to June");
}

TEST(HouseAir, WarmsAndCoolsAtConstantHumidityRatio) {
  const Instant noon{};
  HouseControl control{Celsius(20), Celsius(25), {}, {}};
  const Air winter = HouseAir(constant_year("-5,80"), control).at(noon);
  EXPECT_EQ(winter.temperature, Celsius(20));
  EXPECT_NEAR(humidity_ratio(winter).value(), humidity_ratio({Celsius(-5), RelativeHumidity(0.8)}).value(), 1e-12);
  const Air mild = HouseAir(constant_year("22,50"), control).at(noon);
  EXPECT_NEAR(mild.temperature.value(), 22, 1e-9);
  EXPECT_NEAR(mild.humidity.value(), 0.5, 1e-9);
  const Air summer = HouseAir(constant_year("32,40"), control).at(noon);
  EXPECT_EQ(summer.temperature, Celsius(25));
  EXPECT_NEAR(humidity_ratio(summer).value(), humidity_ratio({Celsius(32), RelativeHumidity(0.4)}).value(), 1e-12);
}

TEST(HouseAir, KeepsBetweenItsSetPointsAndNeverAboveSaturation) {
  const Instant noon{};
  const HouseControl control{Celsius(20), Celsius(24), RelativeHumidity(0.3), RelativeHumidity(0.6)};
  EXPECT_EQ(HouseAir(constant_year("-15,70"), control).at(noon).humidity, RelativeHumidity(0.3));
  EXPECT_EQ(HouseAir(constant_year("30,80"), control).at(noon).humidity, RelativeHumidity(0.6));
  const HouseControl cold{Celsius(10), Celsius(18), {}, {}};
  EXPECT_EQ(HouseAir(constant_year("30,90"), cold).at(noon).humidity, RelativeHumidity(1));
}

}  // namespace
}  // namespace coatday::climate
