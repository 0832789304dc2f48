#include "climate/surface.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <stdexcept>

#include "climate/psychrometrics.h"

namespace coatday::climate {
namespace {

using std::chrono::hours;

const Instant monday{date::sys_days(date::year(2027) / 1 / 11)};

AirSeries rows_of(const std::vector<double>& temperatures, double humidity = 0.5) {
  std::vector<AirRow> rows;
  for (std::size_t i = 0; i < temperatures.size(); ++i) {
    AirRow row;
    row.from = monday + static_cast<int>(i) * AirSeries::step;
    row.air = {Celsius(temperatures[i]), RelativeHumidity(humidity)};
    row.dew_point = dew_point(row.air);
    rows.push_back(row);
  }
  return AirSeries(std::move(rows));
}

/// So many rows at each temperature, one after the other.
AirSeries spells(std::initializer_list<std::pair<int, double>> all) {
  std::vector<double> temperatures;
  for (const auto& [rows, t] : all) temperatures.insert(temperatures.end(), static_cast<std::size_t>(rows), t);
  return rows_of(temperatures);
}

TEST(Surface, AnswersAStepAsTheClosedFormSays) {
  const double tau = 1.25;
  const Surface surface(spells({{4, 8}, {20, 20}}), Hours(tau), monday);
  for (std::size_t r = 0; r <= 20; ++r) {
    const double after = 0.5 * static_cast<double>(r);  // hours since the step
    EXPECT_NEAR(surface.at_row(4 + r).value(), 20 - 12 * std::exp(-after / tau), 1e-9);
  }
}

TEST(Surface, ARowIsTheMeanOverIt) {
  const double tau = 0.75;
  const Surface surface(spells({{4, 8}, {8, 20}}), Hours(tau), monday);
  for (std::size_t r = 0; r < 8; ++r) {
    const double from = 0.5 * static_cast<double>(r), until = from + 0.5;
    const double mean = 20 - 12 * tau / 0.5 * (std::exp(-from / tau) - std::exp(-until / tau));  // integral of the exponential
    EXPECT_NEAR(surface.air().rows()[4 + r].air.temperature.value(), mean, 1e-9);
  }
}

TEST(Surface, OfNoTimeConstantIsTheRoomsAir) {
  const AirSeries room = spells({{3, 8}, {3, 20}, {3, 14}});
  const Surface surface(room, Hours(0), monday);
  for (std::size_t r = 0; r < 9; ++r) {
    EXPECT_EQ(surface.air().rows()[r].air.temperature, room.rows()[r].air.temperature);
    EXPECT_EQ(surface.air().rows()[r].air.humidity, room.rows()[r].air.humidity);
  }
}

TEST(Surface, KeepsVapourPressureAndDewPoint) {
  const AirSeries room = spells({{4, 18}, {8, 21}});
  const Surface surface(room, Hours(2), monday);
  for (std::size_t r = 4; r < 12; ++r) {
    const AirRow& row = surface.air().rows()[r];
    EXPECT_EQ(row.dew_point, room.rows()[r].dew_point);
    EXPECT_NEAR(vapour_pressure(row.air).value(), vapour_pressure(room.rows()[r].air).value(), 1e-9);
    EXPECT_NEAR(dew_point(row.air).value(), row.dew_point.value(), 1e-6);
    EXPECT_GT(row.air.humidity, room.rows()[r].air.humidity);
  }
}

TEST(Surface, BelowTheDewPointIsSaturated) {
  const Surface surface(spells({{4, 2}, {4, 22}}), Hours(4), monday);
  const AirRow& first = surface.air().rows()[4];
  EXPECT_LT(first.air.temperature, first.dew_point);
  EXPECT_EQ(first.air.humidity, RelativeHumidity(1));
}

TEST(Surface, RemembersTheNightBefore) {
  const AirSeries air = spells({{48, 4}, {16, 20}});
  const Instant morning = monday + hours(24);
  const Surface surface(air, Hours(3), morning);
  EXPECT_EQ(surface.air().begin(), morning);
  EXPECT_NEAR(surface.at_row(0).value(), 4, 1e-9);
  EXPECT_EQ(surface.air().rows().size(), 16u);
}

/// Two bodies, integrated apart in small steps: the one that was carried in comes within half a degree of the other when warm() says so.
TEST(Surface, WhatIsCarriedInWarmsWithTheTimeConstant) {
  const double tau = 1.5;
  const AirSeries air = spells({{12, 14}, {12, 20}, {24, 17}});
  const Surface surface(air, Hours(tau), monday);
  const Instant in = monday + hours(5) + Minutes(20);
  const Instant warm = surface.warm(in, Celsius(4));
  double resident = 14, carried = 0;
  constexpr double step = 1.0 / 3600;
  for (Instant t = monday; t < warm; t += std::chrono::seconds(1)) {
    const double room = air.at(t).air.temperature.value();
    if (t == in) carried = 4;
    resident += (room - resident) * step / tau;
    if (t >= in) carried += (room - carried) * step / tau;
  }
  EXPECT_NEAR(resident - carried, 0.5, 0.001);
}

TEST(Surface, NearEnoughNeedsNoWarming) {
  const Surface surface(spells({{12, 14}}), Hours(2), monday);
  EXPECT_EQ(surface.warm(monday, Celsius(13.6)), monday);
  EXPECT_EQ(surface.warm(monday, Celsius(14.4)), monday);
  EXPECT_GT(surface.warm(monday, Celsius(15)), monday);
  EXPECT_THROW((void)surface.warm(monday + hours(6), Celsius(4)), std::out_of_range);
}

TEST(TimeConstant, IsCapacityTimesDepthTimesResistance) {
  // 10 mm of water: 4.18e6 J/(m3 K) x 0.01 m x 0.13 m2K/W = 5434 s
  EXPECT_NEAR(lumped_time_constant(4.18e6, Metres(0.01)).count(), 5434.0 / 3600, 1e-12);
}

TEST(TimeConstant, IsToTheMinute) {
  const auto minutes = [](double exact) { return 60 * whole_minutes(Hours(exact / 60)).count(); };
  EXPECT_NEAR(minutes(0.4), 0, 1e-12);
  EXPECT_NEAR(minutes(4.6), 5, 1e-12);
  EXPECT_NEAR(minutes(15.4), 15, 1e-12) << "up would keep it too warm on a cooling evening";
  EXPECT_NEAR(minutes(15.6), 16, 1e-12) << "down would have it warm too soon in the morning";
}

rc::Gen<std::vector<double>> weather() {
  return rc::gen::nonEmpty(
      rc::gen::container<std::vector<double>>(rc::gen::map(rc::gen::inRange(-300, 400), [](int tenths) { return tenths / 10.0; })));
}

RC_GTEST_PROP(Surface, LiesWithinThePastOfTheAir, ()) {
  const std::vector<double> t = *weather();
  const Surface surface(rows_of(t), Hours(*rc::gen::inRange(1, 80) / 8.0), monday);
  double low = t.front(), high = t.front();
  for (std::size_t r = 0; r < t.size(); ++r) {
    low = std::min(low, t[r]);
    high = std::max(high, t[r]);
    for (const Celsius at : {surface.air().rows()[r].air.temperature, surface.at_row(r + 1)}) {
      RC_ASSERT(at.value() >= low - 1e-9 && at.value() <= high + 1e-9);
    }
  }
}

RC_GTEST_PROP(Surface, AColderHourNeverMakesItWarmer, ()) {
  std::vector<double> t = *weather();
  const Hours tau(*rc::gen::inRange(1, 80) / 8.0);
  const Surface before(rows_of(t), tau, monday);
  t[*rc::gen::inRange<std::size_t>(0, t.size())] -= *rc::gen::inRange(0, 100) / 10.0;
  const Surface after(rows_of(t), tau, monday);
  for (std::size_t r = 0; r < t.size(); ++r) {
    RC_ASSERT(after.air().rows()[r].air.temperature.value() <= before.air().rows()[r].air.temperature.value() + 1e-9);
  }
}

/// From a place that is colder than the room ever is: never warm earlier for a colder place.
RC_GTEST_PROP(Surface, AColderStoreIsNeverWarmEarlier, ()) {
  const std::vector<double> t = *weather();
  const Surface surface(rows_of(t), Hours(*rc::gen::inRange(1, 80) / 8.0), monday);
  const Instant in = monday + *rc::gen::inRange<std::size_t>(0, t.size()) * AirSeries::step;
  const double store = -30 - *rc::gen::inRange(0, 20);
  RC_ASSERT(surface.warm(in, Celsius(store - 5)) >= surface.warm(in, Celsius(store)));
}

}  // namespace
}  // namespace coatday::climate
