// The room's heat and moisture against closed forms and against small steps worked out apart, and what must hold for any room.
#include "climate/room.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "climate/psychrometrics.h"
#include "climate/shop_air.h"
#include "tests/climate/year.h"

namespace coatday::climate {
namespace {

using namespace date::literals;
using std::chrono::hours;

const Instant monday{date::sys_days(2027_y / 1 / 11)};

Surroundings around(double temperature, std::optional<Celsius> set_point, double humidity = 0.8) {
  const Air air{Celsius(temperature), RelativeHumidity(humidity)};
  return {air.temperature, humidity_ratio(air), standard_pressure, set_point};
}

Room heated_room(double lift, Hours time_constant = Hours(6)) {
  Room room{time_constant};
  room.heater = Heater{Kelvins(lift), Kilowatts(5)};
  return room;
}

TEST(RoomHeat, WarmsUpAsTheTimeConstantLetsIt) {
  Hours heating{0};
  // -5 + 30 - (30 - 10) exp(-2/6): 5 °C, heater good for 25 °C, two hours
  EXPECT_NEAR(heated(heated_room(30), Celsius(5), around(-5, Celsius(20)), Hours(2), heating).value(), 25 - 20 * std::exp(-2.0 / 6), 1e-9);
  EXPECT_EQ(heating, Hours(2));
}

TEST(RoomHeat, HoldsTheSetPointWithPartOfItsOutput) {
  Hours heating{0};
  EXPECT_NEAR(heated(heated_room(30), Celsius(5), around(-5, Celsius(20)), Hours(24), heating).value(), 20, 1e-12);
  const double reaching = 6 * std::log(20.0 / 5);  // from 20 K to 5 K below 25 °C
  EXPECT_NEAR(heating.count(), reaching + (24 - reaching) * 25 / 30, 1e-9);
}

TEST(RoomHeat, TooSmallAHeaterNeverGetsThere) {
  Hours heating{0};
  EXPECT_NEAR(heated(heated_room(10), Celsius(20), around(-5, Celsius(20)), Hours(600), heating).value(), 5, 1e-9);
  EXPECT_NEAR(heating.count(), 600, 1e-9);
}

TEST(RoomHeat, FallsToTheNightSetPointAndStays) {
  Hours heating{0};
  const double falling = 6 * std::log(25.0 / 15);
  EXPECT_NEAR(heated(heated_room(30), Celsius(20), around(-5, Celsius(10)), Hours(12), heating).value(), 10, 1e-12);
  EXPECT_NEAR(heating.count(), (12 - falling) * 15 / 30, 1e-9);
}

TEST(RoomHeat, NeverCools) {
  Hours heating{0};
  EXPECT_NEAR(heated(heated_room(30), Celsius(20), around(30, Celsius(20)), Hours(3), heating).value(), 30 - 10 * std::exp(-0.5), 1e-9);
  EXPECT_EQ(heating, Hours(0));
}

TEST(RoomHeat, AWarmRoomInWarmerAirStaysAboveItsSetPoint) {
  Hours heating{0};
  EXPECT_NEAR(heated(heated_room(30), Celsius(25), around(30, Celsius(20)), Hours(3), heating).value(), 30 - 5 * std::exp(-0.5), 1e-9);
}

TEST(RoomHeat, IsLossAndStorageTogether) {
  const Room room = heated_room(30);
  const Surroundings outside = around(-5, Celsius(18));
  Hours heating{0};
  const Celsius end = heated(room, Celsius(5), outside, Hours(9), heating);
  double above = 0;  // integral of what the room is above outdoors, in K h, by the midpoint rule
  constexpr int parts = 90'000;
  for (int i = 0; i < parts; ++i) {
    Hours ignored{0};
    above += (heated(room, Celsius(5), outside, Hours(9 * (i + 0.5) / parts), ignored) - Celsius(-5)).value() * 9 / parts;
  }
  const double loss_per_kelvin = 5.0 / 30;  // kW/K
  EXPECT_NEAR(heating.count() * 5, loss_per_kelvin * (above + 6 * (end - Celsius(5)).value()), 1e-6);
}

Moisture moisture(double gain = 0, std::optional<Dehumidifier> dehumidifier = {}) {
  return {CubicMetres(150), 0.5, KilogramsPerHour(gain), dehumidifier};
}

TEST(RoomMoisture, ApproachesWhatVentilationAndGainLeaveIt) {
  RoomWork work;
  const Surroundings outside = around(20, {}, 0.4);
  const double mass = dry_air(CubicMetres(150), Celsius(20), HumidityRatio(0.004), standard_pressure).value();
  const double end = outside.water.value() + 0.1 / (0.5 * mass);
  const HumidityRatio after = dried(moisture(0.1), HumidityRatio(0.004), Celsius(20), outside, Hours(2), work);
  EXPECT_NEAR(after.value(), end + (0.004 - end) * std::exp(-1.0), 1e-12);
  EXPECT_EQ(work.condensed, Kilograms(0));
}

TEST(RoomMoisture, DryAirOfARoom) {
  // ASHRAE Handbook Fundamentals 2017, chapter 1, table 2: dry air at 20 °C has 0.8304 m³/kg.
  EXPECT_NEAR(dry_air(CubicMetres(100), Celsius(20), HumidityRatio(0), standard_pressure).value(), 100 / 0.8304, 0.02);
}

TEST(RoomMoisture, DehumidifierStopsAtItsSetPoint) {
  RoomWork work;
  const Dehumidifier strong{RelativeHumidity(0.5), KilogramsPerHour(50)};
  const HumidityRatio after = dried(moisture(0.1, strong), HumidityRatio(0.012), Celsius(20), around(20, {}, 0.9), Hours(1), work);
  EXPECT_NEAR(relative_humidity(Celsius(20), after).value(), 0.5, 1e-12);
  EXPECT_GT(work.removed, Kilograms(0));
}

TEST(RoomMoisture, DehumidifierTakesNoMoreThanItCan) {
  RoomWork work, without;
  const Dehumidifier weak{RelativeHumidity(0.3), KilogramsPerHour(0.5)};
  const HumidityRatio dry = dried(moisture(0.1, weak), HumidityRatio(0.012), Celsius(20), around(20, {}, 0.9), Hours(4), work);
  const HumidityRatio damp = dried(moisture(0.1), HumidityRatio(0.012), Celsius(20), around(20, {}, 0.9), Hours(4), without);
  EXPECT_NEAR(work.removed.value(), 2, 1e-12);
  EXPECT_LT(dry, damp);
}

TEST(RoomMoisture, WhatTheAirCannotHoldCondenses) {
  RoomWork work;
  const HumidityRatio after = dried(moisture(2), HumidityRatio(0.008), Celsius(10), around(9, {}, 0.95), Hours(3), work);
  EXPECT_NEAR(relative_humidity(Celsius(10), after).value(), 1, 1e-12);
  EXPECT_GT(work.condensed, Kilograms(0));
  EXPECT_EQ(work.condensing, Hours(3));
}

/// A made-up outdoor year that swings with the day.
const OutdoorYear& swinging() {
  static const OutdoorYear year = OutdoorYear::parse(year_text("# utc_offset_h 0", "month,day,hour,t_C,rh_pct",
                                                               [](int, int day, int hour) {
                                                                 return std::to_string(4 * std::cos((hour - 15) * 0.2618) + day % 7) + "," +
                                                                        std::to_string(75 - 15 * std::cos((hour - 15) * 0.2618));
                                                               }),
                                                     "swinging")
                                      .value();
  return year;
}

Timetable daytime(double set_point) { return {{{{}, {}, {}, {{hours(8), hours(17), Celsius(set_point)}}, {}, {}}}, {}}; }

/// The same room in steps of 5 s, by Euler's method: nothing in common with the closed forms but the equations.
Air by_small_steps(const Room& room, const Timetable& timetable, Instant until) {
  constexpr std::chrono::seconds step{5};
  Instant t = monday - date::weeks(2);
  const auto outside = [&](Instant at) { return swinging().at(at); };
  double temperature = outside(t).temperature.value(), water = humidity_ratio(outside(t), swinging().pressure()).value();
  for (; t < until; t += step) {
    const Air air = outside(t + step / 2);
    const double span = Hours(step).count(), pressure = swinging().pressure().value();
    const auto set = timetable.set_point(Zone().to_local(t));
    const double lost = temperature - (temperature - air.temperature.value()) * span / room.time_constant.count();
    const double most = lost + room.heater->lift.value() * span / room.time_constant.count();
    temperature = set && lost < set->value() ? std::min(most, set->value()) : lost;
    const Moisture& m = *room.moisture;
    const double mass = dry_air(m.volume, Celsius(temperature), HumidityRatio(water), Pascals(pressure)).value();
    water += span * (m.air_changes * (humidity_ratio(air, Pascals(pressure)).value() - water) + m.gain.value() / mass);
    const double wanted = humidity_ratio({Celsius(temperature), m.dehumidifier->set_point}, Pascals(pressure)).value();
    if (water > wanted) water = std::max(wanted, water - span * m.dehumidifier->capacity.value() / mass);
  }
  return {Celsius(temperature), relative_humidity(Celsius(temperature), HumidityRatio(water), swinging().pressure())};
}

TEST(RoomSteps, TenMinutesAreSmallEnough) {
  Room room = heated_room(22, Hours(8));
  room.moisture = moisture(0.4, Dehumidifier{RelativeHumidity(0.5), KilogramsPerHour(0.5)});
  const HeatedShopAir air(swinging(), daytime(20), room, Zone(), monday, monday + hours(48));
  for (const int hour : {3, 8, 10, 13, 17, 20, 31}) {
    const Air exact = by_small_steps(room, daytime(20), monday + hours(hour)), ours = air.at(monday + hours(hour));
    EXPECT_NEAR(ours.temperature.value(), exact.temperature.value(), 0.02) << hour;
    EXPECT_NEAR(ours.humidity.value(), exact.humidity.value(), 0.003) << hour;
  }
}

TEST(RoomSteps, KeepWhatNothingAddsOrTakes) {
  Room room = heated_room(40, Hours(8));
  room.moisture = moisture();
  const HeatedShopAir air(constant_year("2,70"), daytime(20), room, Zone(), monday, monday + hours(48));
  const double outside = humidity_ratio({Celsius(2), RelativeHumidity(0.7)}).value();
  for (int hour = 0; hour <= 48; ++hour) EXPECT_NEAR(humidity_ratio(air.at(monday + hours(hour))).value(), outside, 1e-12);
}

TEST(RoomSteps, TellWhatTheHeaterAndTheDampDid) {
  Room room = heated_room(30, Hours(8));
  room.moisture = moisture(1.5);
  const HeatedShopAir air(constant_year("0,90"), {{}, Celsius(10)}, room, Zone(), monday, monday + hours(48));
  const RoomWork day = air.work(monday, monday + hours(24)).value();
  EXPECT_NEAR(day.heating.count(), 8, 1e-6);  // 10 K of 30 K, in the steady state
  EXPECT_NEAR(day.condensing.count(), 24, 1e-9);
  // What comes in stays, leaves with the air or condenses.
  const double saturated = humidity_ratio({Celsius(10), RelativeHumidity(1)}).value();
  const double mass = dry_air(CubicMetres(150), Celsius(10), HumidityRatio(saturated), standard_pressure).value();
  const double leaves = 0.5 * mass * (saturated - humidity_ratio({Celsius(0), RelativeHumidity(0.9)}).value());
  EXPECT_NEAR(day.condensed.value(), 24 * (1.5 - leaves), 1e-3);
  const AirSeries series(air, monday, monday + hours(1));
  EXPECT_NEAR(series.work(0)->heating.count(), 1.0 / 6, 1e-6);
}

TEST(RoomSteps, RefuseWhatIsNoRoom) {
  for (const double bad : {0.0, -1.0, std::nan("")}) {
    EXPECT_THROW(HeatedShopAir(constant_year("2,70"), {}, heated_room(bad), Zone(), monday, monday), std::invalid_argument);
    Room room{Hours(6)};
    room.moisture = {CubicMetres(bad), 0.5};
    EXPECT_THROW(HeatedShopAir(constant_year("2,70"), {}, room, Zone(), monday, monday), std::invalid_argument);
    room.moisture = {CubicMetres(150), bad};
    EXPECT_THROW(HeatedShopAir(constant_year("2,70"), {}, room, Zone(), monday, monday), std::invalid_argument);
  }
}

double within(int low, int high) { return *rc::gen::inRange(low, high) / 10.0; }

struct AnyStep {
  Room room = heated_room(within(10, 500), Hours(within(2, 600)));
  Celsius from{within(-200, 400)};
  Hours span{within(1, 100)};
  std::optional<Celsius> set = *rc::gen::inRange(0, 4) == 0 ? std::nullopt : std::optional(Celsius(within(50, 250)));

  [[nodiscard]] Celsius in(double outdoors, const Room& other) const {
    Hours heating{0};
    return heated(other, from, around(outdoors, set), span, heating);
  }
};

RC_GTEST_PROP(RoomHeat, WarmerOutdoorsNeverMakesAColderShop, ()) {
  const AnyStep step;
  const double outdoors = within(-250, 350), more = within(0, 100);
  RC_ASSERT(step.in(outdoors + more, step.room).value() >= step.in(outdoors, step.room).value() - 1e-9);
}

RC_GTEST_PROP(RoomHeat, MoreHeaterIsNeverColder, ()) {
  const AnyStep step;
  Room larger = step.room;
  larger.heater->lift += Kelvins(within(0, 300));
  const double outdoors = within(-250, 350);
  RC_ASSERT(step.in(outdoors, larger).value() >= step.in(outdoors, step.room).value() - 1e-9);
}

RC_GTEST_PROP(RoomHeat, StepsMayBeCutAnywhere, ()) {
  const AnyStep step;
  const Surroundings outside = around(within(-250, 350), step.set);
  Hours whole{0}, parts{0};
  const Celsius once = heated(step.room, step.from, outside, step.span, whole);
  const Hours first = step.span * (*rc::gen::inRange(1, 9) / 10.0);
  const Celsius halfway = heated(step.room, step.from, outside, first, parts);
  const Celsius twice = heated(step.room, halfway, outside, step.span - first, parts);
  RC_ASSERT(std::abs((once - twice).value()) < 1e-6);
  RC_ASSERT(std::abs((whole - parts).count()) < 1e-6);
}

RC_GTEST_PROP(RoomMoisture, DehumidifierNeverMakesItDamper, ()) {
  const Air inside{Celsius(within(0, 300)), RelativeHumidity(within(1, 10))};
  const Surroundings outside = around(within(-100, 350), {}, within(1, 10));
  const double gain = within(0, 20);
  const Hours span(within(1, 50));
  RoomWork work, ignored;
  const Dehumidifier any{RelativeHumidity(within(2, 9)), KilogramsPerHour(within(0, 30))};
  const HumidityRatio water = humidity_ratio(inside);
  const HumidityRatio dry = dried(moisture(gain, any), water, inside.temperature, outside, span, work);
  const HumidityRatio damp = dried(moisture(gain), water, inside.temperature, outside, span, ignored);
  RC_ASSERT(dry <= damp);
  RC_ASSERT(dry >= std::min(damp, humidity_ratio({inside.temperature, any.set_point}) * (1 - 1e-12)));
  RC_ASSERT(work.removed.value() <= any.capacity.value() * span.count() + 1e-12);
}

}  // namespace
}  // namespace coatday::climate
