#include <gtest/gtest.h>
#include <stdexcept>

#include "climate/psychrometrics.h"
#include "climate/shop_air.h"

namespace coatday::climate {
namespace {

using std::chrono::hours;

const Instant noon{date::sys_days(date::year(2027) / 1 / 11) + hours(12)};

/// A degree warmer every hour after noon.
class RisingAir final : public AirSource {
 public:
  [[nodiscard]] Air at(Instant t) const override { return {Celsius(Hours(t - noon).count()), RelativeHumidity(0.5)}; }
  [[nodiscard]] std::string describe(Units) const override { return "rising"; }
};

TEST(AirSeries, RowsAreHalfHoursThatBeginOnTheHour) {
  const AirSeries series(RisingAir(), noon + Minutes(40), noon + Minutes(95));
  ASSERT_EQ(series.rows().size(), 3u);
  EXPECT_EQ(series.begin(), noon + Minutes(30));
  EXPECT_EQ(series.end(), noon + Minutes(120));
  EXPECT_EQ(series.rows()[1].from, noon + Minutes(60));
}

TEST(AirSeries, ARowTakesTheAirAtItsMiddle) {
  const AirSeries series(RisingAir(), noon, noon + hours(1));
  EXPECT_DOUBLE_EQ(series.rows()[0].air.temperature.value(), 0.25);
  EXPECT_DOUBLE_EQ(series.rows()[1].air.temperature.value(), 0.75);
  EXPECT_EQ(series.rows()[1].dew_point, dew_point(series.rows()[1].air));
}

TEST(AirSeries, ARowHoldsUntilTheNext) {
  const AirSeries series(RisingAir(), noon, noon + hours(2));
  EXPECT_EQ(series.index(noon), 0u);
  EXPECT_EQ(series.index(noon + Minutes(30) - std::chrono::seconds(1)), 0u);
  EXPECT_EQ(series.index(noon + Minutes(30)), 1u);
  EXPECT_EQ(series.index(noon + hours(2) - std::chrono::seconds(1)), 3u);
  EXPECT_THROW((void)series.index(noon + hours(2)), std::out_of_range);
  EXPECT_THROW((void)series.index(noon - std::chrono::seconds(1)), std::out_of_range);
}

TEST(AirSeries, BeforeTheEpochToo) {
  const Instant t{-Minutes(10)};
  EXPECT_EQ(AirSeries(RisingAir(), t, t + Minutes(1)).begin(), Instant(-Minutes(30)));
}

TEST(AirSeries, NoTimeNoRows) {
  EXPECT_TRUE(AirSeries(RisingAir(), noon, noon).rows().empty());
  EXPECT_TRUE(AirSeries(RisingAir(), noon, noon - hours(5)).rows().empty());
  EXPECT_THROW((void)AirSeries().index(noon), std::out_of_range);
}

}  // namespace
}  // namespace coatday::climate
