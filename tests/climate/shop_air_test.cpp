#include "climate/shop_air.h"

#include <gtest/gtest.h>
#include <cmath>
#include <stdexcept>

#include "climate/psychrometrics.h"
#include "tests/climate/year.h"

namespace coatday::climate {
namespace {

using namespace date::literals;
using std::chrono::hours;

const Instant monday{date::sys_days(2027_y / 1 / 11)};

Timetable working_hours(double set_point, std::optional<Celsius> otherwise = {}) {
  return {{{{}, {}, {}, {{hours(8), hours(17), Celsius(set_point)}}, otherwise, {}}}, {}};
}

HeatedShopAir shop(const std::string& outdoors, Timetable timetable, Hours time_constant = Hours(6)) {
  return HeatedShopAir(constant_year(outdoors), std::move(timetable), {time_constant}, Zone(), monday, monday + hours(72));
}

double temperature(const HeatedShopAir& air, Hours after_midnight) { return air.at(later(monday, after_midnight)).temperature.value(); }

TEST(HeatedShopAir, FallsBackExponentially) {
  const HeatedShopAir air = shop("-5,80", working_hours(20));
  for (const double h : {0.0, 0.05, 0.5, 1.0, 6.0, 11.25, 14.9})  // closed form: -5 + 25 exp(-h / 6)
    EXPECT_NEAR(temperature(air, Hours(17 + h)), -5 + 25 * std::exp(-h / 6), 1e-9) << h;
}

TEST(HeatedShopAir, HoldsTheSetPointFromTheFirstMinute) {
  const HeatedShopAir air = shop("-5,80", working_hours(20));
  EXPECT_LT(temperature(air, Hours(8) - Hours(1.0 / 3600)), 0);
  for (const double h : {8.0, 8.01, 12.345, 16.99, 17.0}) EXPECT_NEAR(temperature(air, Hours(h)), 20, 1e-9) << h;
}

TEST(HeatedShopAir, HoldsTheNightSetPointToo) {
  const HeatedShopAir air = shop("-5,80", working_hours(20, Celsius(10)));
  EXPECT_NEAR(temperature(air, Hours(19)), -5 + 25 * std::exp(-2.0 / 6), 1e-9);
  EXPECT_NEAR(temperature(air, Hours(24)), 10, 1e-9);
}

TEST(HeatedShopAir, NeverCools) {
  const HeatedShopAir air = shop("30,40", working_hours(20, Celsius(10)));
  for (double h = 0; h <= 72; h += 1.7) EXPECT_NEAR(temperature(air, Hours(h)), 30, 1e-9);
}

TEST(HeatedShopAir, CarriesTheHumidityRatioOver) {
  const HeatedShopAir air = shop("-5,80", working_hours(20));
  const Air inside = air.at(monday + hours(12));
  EXPECT_NEAR(humidity_ratio(inside).value(), humidity_ratio({Celsius(-5), RelativeHumidity(0.8)}).value(), 1e-12);
  EXPECT_LT(inside.humidity, RelativeHumidity(0.2));
}

TEST(HeatedShopAir, CapsHumidityAtSaturation) {
  // Outdoors turns from cold to warm and damp at noon: the unheated shop lags behind and is colder than the dew point.
  const auto text =
      year_text("# utc_offset_h 0", "month,day,hour,t_C,rh_pct", [](int, int, int hour) { return hour <= 12 ? "0,90" : "20,95"; });
  const HeatedShopAir air(OutdoorYear::parse(text, "x").value(), {}, {Hours(12)}, Zone(), monday, monday + hours(24));
  EXPECT_EQ(air.at(monday + hours(14)).humidity, RelativeHumidity(1));
  EXPECT_LT(air.at(monday + hours(12) - Minutes(45)).humidity, RelativeHumidity(1));
}

TEST(HeatedShopAir, WallTimeOfTheShop) {
  const Zone chicago = Zone::find("America/Chicago").value();
  const HeatedShopAir air(constant_year("0,50"), working_hours(20), {Hours(0.5)}, chicago, monday, monday + hours(24));
  EXPECT_NEAR(air.at(monday + hours(14)).temperature.value(), 20, 1e-9);  // 08:00 CST
  EXPECT_LT(air.at(monday + hours(14) - std::chrono::seconds(1)).temperature.value(), 1);
}

TEST(HeatedShopAir, ForgetsWhereItStarted) {
  const HeatedShopAir later_start(constant_year("-5,80"), working_hours(20), {Hours(24)}, Zone(), monday + hours(48), monday + hours(72));
  const HeatedShopAir air = shop("-5,80", working_hours(20), Hours(24));
  EXPECT_NEAR(temperature(air, Hours(50)), temperature(later_start, Hours(50)), 1e-4);
}

TEST(HeatedShopAir, CoversTheRowsOfASeriesAndNoMore) {
  const HeatedShopAir air(constant_year("5,50"), {}, {Hours(6)}, Zone(), monday + Minutes(17), monday + Minutes(95));
  EXPECT_EQ(AirSeries(air, monday + Minutes(17), monday + Minutes(95)).rows().size(), 4u);
  EXPECT_THROW((void)air.at(monday - std::chrono::seconds(1)), std::out_of_range);
  EXPECT_THROW((void)air.at(monday + Minutes(120) + std::chrono::seconds(1)), std::out_of_range);
}

TEST(HeatedShopAir, RefusesATimeConstantThatIsNotPositive) {
  for (const double h : {0.0, -1.0, std::nan("")}) EXPECT_THROW((void)shop("5,50", {}, Hours(h)), std::invalid_argument);
}

TEST(HeatedShopAir, StaysBetweenOutdoorsAndTheSetPoint) {
  for (const double time_constant : {0.25, 6.0, 48.0}) {
    const HeatedShopAir air = shop("-12,70", working_hours(20), Hours(time_constant));
    for (Instant t = monday; t <= monday + hours(72); t += Minutes(7)) {
      const Air any = air.at(t);
      EXPECT_GE(any.temperature.value(), -12 - 1e-9);
      EXPECT_LE(any.temperature.value(), 20 + 1e-9);
      EXPECT_GT(any.humidity, RelativeHumidity(0));
      EXPECT_LE(any.humidity, RelativeHumidity(1));
    }
  }
}

TEST(TimetableAir, TemperatureAndHumidityOfTheRule) {
  Timetable timetable = working_hours(20, Celsius(12));
  timetable.rules[0].humidity = RelativeHumidity(0.45);
  const TimetableAir air(timetable, Zone());
  EXPECT_EQ(air.at(monday + hours(9)).temperature, Celsius(20));
  EXPECT_EQ(air.at(monday + hours(20)).temperature, Celsius(12));
  EXPECT_EQ(air.at(monday).humidity, RelativeHumidity(0.45));
}

TEST(TimetableAir, ThrowsWhereTheTimetableIsSilent) {
  EXPECT_THROW((void)TimetableAir({}, Zone()).at(monday), std::out_of_range);
  EXPECT_THROW((void)TimetableAir(working_hours(20, Celsius(12)), Zone()).at(monday), std::out_of_range) << "no humidity";
  Timetable off_at_night = working_hours(20);
  off_at_night.rules[0].humidity = RelativeHumidity(0.45);
  EXPECT_NO_THROW((void)TimetableAir(off_at_night, Zone()).at(monday + hours(9)));
  EXPECT_THROW((void)TimetableAir(off_at_night, Zone()).at(monday + hours(20)), std::out_of_range);
}

TEST(ConstantAir, AlwaysTheSame) {
  const ConstantAir air({Celsius(20), RelativeHumidity(0.5)});
  EXPECT_EQ(air.at(monday).temperature, Celsius(20));
  EXPECT_EQ(air.at(monday + hours(999)).humidity, RelativeHumidity(0.5));
}

TEST(DescribeAir, InTheReadersUnits) {
  EXPECT_EQ(ConstantAir({Celsius(20), RelativeHumidity(0.5)}).describe(Units::metric), "20 °C, 50 % RH at all times");
  EXPECT_EQ(TimetableAir(working_hours(20, Celsius(10)), Zone()).describe(Units::us), "68 °F in the heated hours, otherwise 50 °F");
  EXPECT_EQ(shop("5,50", working_hours(20)).describe(Units::metric),
            "20 °C in the heated hours, otherwise off; outdoor air of a year that the file does not name, nowhere");
  Timetable two = working_hours(20);
  two.rules.push_back(working_hours(15, Celsius(8)).rules[0]);
  EXPECT_EQ(TimetableAir(two, Zone()).describe(Units::metric), "15 °C to 20 °C in the heated hours, otherwise 8 °C or off");
  EXPECT_EQ(shop("5,50", {}).describe(Units::metric), "no heating; outdoor air of a year that the file does not name, nowhere");
}

}  // namespace
}  // namespace coatday::climate
