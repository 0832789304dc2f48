#include "climate/logged_air.h"

#include <gtest/gtest.h>

#include <cmath>

#include "climate/psychrometrics.h"
#include "climate/shop_air.h"

namespace coatday::climate {
namespace {

using namespace date::literals;
using std::chrono::hours;

const Instant noon = Instant(date::sys_days(2027_y / 1 / 11)) + hours(12);
constexpr Air always{Celsius(10), RelativeHumidity(0.8)};

struct Given {
  Minutes after;
  double temperature;
  std::optional<double> humidity;
};

LoggedAir logged(const std::vector<Given>& readings, Air next = always) {
  Log log;
  log.name = "log.csv";
  log.usual_step = Minutes(30);
  for (const Given& g : readings) {
    log.readings.push_back({noon + g.after, Celsius(g.temperature), std::nullopt});
    if (g.humidity) log.readings.back().humidity = RelativeHumidity(*g.humidity);
  }
  return {std::make_shared<const Log>(std::move(log)), std::make_unique<ConstantAir>(next)};
}

TEST(LoggedAir, ConstantReadingsGiveConstantAir) {
  std::vector<Given> readings;
  for (int i = 0; i < 20; ++i) readings.push_back({Minutes(37 * i), 18, 0.5});
  const AirSeries rows(logged(readings), noon, noon + hours(11));
  for (const AirRow& row : rows.rows()) {
    EXPECT_NEAR(row.air.temperature.value(), 18, 1e-12);
    EXPECT_NEAR(row.air.humidity.value(), 0.5, 1e-12);
  }
}

TEST(LoggedAir, ReadingsAreAveragedInARowAndNotSampled) {
  const LoggedAir air = logged({{Minutes(0), 10, 0.4}, {Minutes(10), 20, 0.6}, {Minutes(20), 10, 0.4}, {Minutes(60), 10, 0.4}});
  const AirRow row = AirSeries(air, noon, noon + Minutes(30)).rows()[0];
  EXPECT_NEAR(row.air.temperature.value(), 10 + 10.0 / 3, 1e-12) << "a triangle over two thirds of the row";
  EXPECT_NEAR(row.air.humidity.value(), 0.4 + 0.2 / 3, 1e-12);
  EXPECT_EQ(row.origin, Origin::log);
}

/// Beyond the last reading the step to the next source fades with 4 h: after one such time 1/e of it is left.
TEST(LoggedAir, TheStepAtTheEndFades) {
  const LoggedAir air = logged({{Minutes(0), 18, 0.5}, {Minutes(60), 18, 0.5}});
  const Instant end = noon + hours(1);
  EXPECT_NEAR(air.at(end + std::chrono::seconds(1)).temperature.value(), 18, 1e-3);
  EXPECT_NEAR(air.at(end + std::chrono::seconds(1)).humidity.value(), 0.5, 1e-3);
  EXPECT_NEAR(air.at(end + hours(4)).temperature.value(), 10 + 8 * std::exp(-1), 1e-9);
  const double ratio = vapour_pressure({Celsius(18), RelativeHumidity(0.5)}) / vapour_pressure(always);
  EXPECT_NEAR(vapour_pressure(air.at(end + hours(4))) / vapour_pressure(always), std::pow(ratio, std::exp(-1)), 1e-9);
  EXPECT_NEAR(air.at(end + hours(49)).temperature.value(), 10, 1e-12);
  EXPECT_NEAR(air.at(noon - hours(4)).temperature.value(), 10 + 8 * std::exp(-1), 1e-9) << "before the first reading too";
  EXPECT_EQ(air.origin(end + hours(1)), Origin::blend);
  EXPECT_EQ(air.origin(end + hours(12)), Origin::constant);
}

TEST(LoggedAir, ALongGapMeetsBothEnds) {
  const LoggedAir air = logged({{Minutes(0), 18, 0.5}, {Minutes(60), 18, 0.5}, {Minutes(60) + hours(40), 14, 0.6}, {hours(42), 14, 0.6}});
  const Instant from = noon + hours(1), until = from + hours(40);
  EXPECT_NEAR(air.at(from + std::chrono::seconds(1)).temperature.value(), 18, 2e-3);
  EXPECT_NEAR(air.at(until - std::chrono::seconds(1)).temperature.value(), 14, 2e-3);
  EXPECT_NEAR(air.at(from + hours(20)).temperature.value(), 10, 0.1);
  EXPECT_EQ(air.origin(from + hours(20)), Origin::constant);
  double before = 18;
  for (Instant t = from; t < from + hours(20); t += Minutes(10)) {
    const Air here = air.at(t);
    EXPECT_LE(here.temperature.value(), before + 1e-9);
    EXPECT_LE(here.humidity, RelativeHumidity(1));
    before = here.temperature.value();
  }
}

TEST(LoggedAir, AShortGapIsStraight) {
  const LoggedAir air = logged({{Minutes(0), 18, 0.5}, {hours(2), 20, 0.6}});
  EXPECT_NEAR(air.at(noon + hours(1)).temperature.value(), 19, 1e-12);
  EXPECT_EQ(air.origin(noon + hours(1)), Origin::log_bridged);
}

TEST(LoggedAir, WithoutHumidityTheMoistureIsTheNextSources) {
  const LoggedAir air = logged({{Minutes(0), 18, std::nullopt}, {hours(1), 18, std::nullopt}});
  const Air here = air.at(noon + Minutes(30));
  EXPECT_EQ(here.temperature, Celsius(18));
  EXPECT_NEAR(vapour_pressure(here) / vapour_pressure(always), 1, 1e-12);
  EXPECT_EQ(air.origin(noon + Minutes(30)), Origin::log_temperature);
}

TEST(LoggedAir, NeverAboveSaturation) {
  const LoggedAir air = logged({{Minutes(0), 2, std::nullopt}, {hours(1), 2, std::nullopt}}, {Celsius(25), RelativeHumidity(0.9)});
  EXPECT_EQ(air.at(noon).humidity, RelativeHumidity(1));
}

TEST(LoggedAir, SaysWhatItIs) {
  EXPECT_EQ(logged({{Minutes(0), 18, 0.5}}).describe(Units::metric), "readings of log.csv; beyond them 10 °C, 80 % RH at all times");
}

TEST(TimetableAir, DaysWithoutARuleTakeTheConstantAir) {
  Timetable table;
  HeatingRule rule;
  rule.days = {date::Monday};
  rule.otherwise = Celsius(15);
  rule.humidity = RelativeHumidity(0.4);
  table.rules.push_back(rule);
  const TimetableAir air(table, Zone(), always);
  EXPECT_EQ(air.at(noon).temperature, Celsius(15));  // a Monday
  EXPECT_EQ(air.origin(noon), Origin::timetable);
  EXPECT_EQ(air.at(noon + hours(24)).temperature, Celsius(10));
  EXPECT_EQ(air.origin(noon + hours(24)), Origin::constant);
  EXPECT_EQ(air.describe(Units::metric), "15 °C; on other days 10 °C, 80 % RH");
}

}  // namespace
}  // namespace coatday::climate
