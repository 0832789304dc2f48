// What a maker could change: each change does what it says and nothing else.

#include "planner/advice/changes.h"

#include <gtest/gtest.h>

#include <algorithm>

#include <fmt/core.h>

#include "checker/check.h"
#include "climate/logged_air.h"
#include "climate/psychrometrics.h"
#include "planner/advice/air.h"
#include "planner/advice/air_advice.h"
#include "planner/advice/another_product.h"
#include "planner/advice/hands.h"
#include "planner/advice/lateness_advice.h"
#include "planner/advice/room.h"
#include "planner/make/make_plan.h"
#include "tests/climate/year.h"
#include "tests/support/jobs.h"

namespace coatday::planner {
namespace {

using climate::Air;
using climate::HeatedHours;
using climate::HeatingRule;
using climate::KnownRoom;
using tests::make_job;
using tests::monday;

const job::Request request{monday()};

/// All of a job that no change of the air may touch.
std::string all_but_air(const job::Job& job) {
  std::string text = fmt::format("{} people, {} shifts, {} days off, {} works, start {}\n", job.shop.people, job.shop.week.size(),
                                 job.shop.closed.size(), job.shop.work.size(), job.order.start ? iso8601(*job.order.start, Zone()) : "any");
  for (const shop::DryingPlace& place : job.shop.places) text += fmt::format("{} {}\n", place.count, place.name);
  for (const auto& [id, schedule] : job.catalogue.schedules) {
    for (const finish::Step& step : schedule.steps)
      text += fmt::format("{} {} {} {}\n", id, step.id, step.product.value_or("dry"), step.thinner_share);
  }
  for (const auto& [id, product] : job.catalogue.products) text += fmt::format("{} {}\n", id, product.rate_factors.drying);
  for (const job::OrderPiece& piece : job.order.pieces) text += fmt::format("{} {}\n", piece.piece.id, piece.piece.parts.size());
  return text;
}

bool heated_hour(Instant t) {  // UTC, Monday to Friday
  const auto clock = t - date::floor<date::days>(t);
  const weekday day{date::floor<date::days>(t)};
  return day != date::Saturday && day != date::Sunday && clock >= std::chrono::hours(7) && clock < std::chrono::hours(17);
}

/// A fortnight of half hours, an instant at each one's middle.
std::vector<Instant> half_hours() {
  std::vector<Instant> all;
  for (Instant t = monday(); t < monday() + date::weeks(2); t += Minutes(30)) all.push_back(t + Minutes(15));
  return all;
}

struct Both {
  std::unique_ptr<climate::AirSource> before, after;
};
/// The air with the change, after a look at everything else.
Both changed(const job::Job& job, const Change& change) {
  job::Job other = job;
  Instant from = request.from;
  change.make(other, from);
  EXPECT_EQ(all_but_air(other), all_but_air(job));
  EXPECT_EQ(from, request.from);
  const auto air = [](const job::Job& one) { return one.air(monday() - date::days(3), monday() + date::weeks(8)); };
  return {air(job), air(other)};
}

HeatingRule weekdays() {
  HeatingRule rule;
  for (unsigned day = 1; day <= 5; ++day) rule.days.emplace_back(day);
  rule.heated = {HeatedHours{Minutes(7 * 60), Minutes(17 * 60), Celsius(18)}};
  return rule;
}

/// Heated on weekdays to 18 °C, 8 °C otherwise, 45 % RH, and 8 °C at weekends.
job::Job stated() {
  job::Job job = make_job();
  KnownRoom room;
  HeatingRule weekend;
  weekend.otherwise = Celsius(8);
  room.heating.rules = {weekend, weekdays()};
  room.heating.rules[1].otherwise = Celsius(8);
  for (HeatingRule& rule : room.heating.rules) rule.humidity = RelativeHumidity(0.45);
  job.air = [table = room.heating](Instant, Instant) { return std::make_unique<climate::TimetableAir>(table, Zone()); };
  job.room = std::make_shared<const KnownRoom>(room);
  return job;
}

/// The same hours, otherwise off, in a room that cools towards outdoors, with water from people.
job::Job through_a_room(std::optional<climate::Dehumidifier> dehumidifier = {}, std::optional<climate::Heater> heater = {},
                        const std::string& outdoors = "5,80") {
  job::Job job = make_job();
  KnownRoom room;
  room.outdoors = climate::constant_year(outdoors);
  room.heating.rules = {weekdays()};
  room.room = {Hours(10), heater, climate::Moisture{CubicMetres(150), 0.4, KilogramsPerHour(0.1), dehumidifier}};
  job.air_in = [](const KnownRoom& one) -> job::AirMaker {
    return [one](Instant from, Instant until) {
      return std::make_unique<climate::HeatedShopAir>(*one.outdoors, one.heating, one.room, Zone(), from, until);
    };
  };
  job.air = job.air_in(room);
  job.room = std::make_shared<const KnownRoom>(room);
  return job;
}

ChangeSizes warm(const job::Job& job, Heated heated) { return warmth(job, make_plan(job, request), heated); }
ChangeSizes dry(const job::Job& job) { return dryness(job, make_plan(job, request)); }
std::string text(job::Job job, const Change& change) {
  Instant from = request.from;
  change.make(job, from);
  return change.text(make_plan(job, {from}));
}

constexpr double floors[] = {10, 13, 16, 18, 20, 22};

TEST(Changes, StatedAirIsWarmerAtNightAlone) {
  const job::Job job = stated();
  const ChangeSizes sizes = warm(job, Heated::at_night);
  ASSERT_EQ(sizes.size(), 4U);  // up to what it is by day
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    EXPECT_EQ(text(job, sizes[i]), fmt::format("heat outside the heated hours, nights and days off: {} °C or warmer", floors[i]));
    const Both air = changed(job, sizes[i]);
    for (const Instant t : half_hours()) {
      EXPECT_EQ(air.after->at(t).temperature, heated_hour(t) ? Celsius(18) : Celsius(floors[i]));
      EXPECT_EQ(air.after->at(t).humidity, RelativeHumidity(0.45)) << "as the file states it";
    }
  }
}

TEST(Changes, StatedAirIsWarmerAtAllHours) {
  const job::Job job = stated();
  const ChangeSizes sizes = warm(job, Heated::throughout);
  ASSERT_EQ(sizes.size(), 2U);  // 20 and 22 °C: below is no more than the day has
  const Both air = changed(job, sizes.back());
  for (const Instant t : half_hours()) EXPECT_EQ(air.after->at(t).temperature, Celsius(22));
}

TEST(Changes, NoNightWhereNoKeyTellsOfOne) {
  tests::JobKnobs knobs;
  knobs.air = {Celsius(12), RelativeHumidity(0.5)};
  const job::Job constant = make_job(knobs);
  EXPECT_TRUE(warm(constant, Heated::at_night).empty());
  EXPECT_FALSE(warm(constant, Heated::throughout).empty());
  job::Job unheated = through_a_room();
  KnownRoom room = *unheated.room;
  room.heating.rules.clear();
  unheated.air = unheated.air_in(room);
  unheated.room = std::make_shared<const KnownRoom>(room);
  EXPECT_TRUE(warm(unheated, Heated::at_night).empty());
  const ChangeSizes all_day = warm(unheated, Heated::throughout);
  ASSERT_FALSE(all_day.empty());
  const Both air = changed(unheated, all_day.back());
  for (const Instant t : half_hours()) EXPECT_EQ(air.after->at(t).temperature, Celsius(22));
}

/// Outdoors 5 °C and 80 % RH: 698 Pa of vapour, of 872.6 Pa at saturation (ASHRAE Handbook Fundamentals 2017 ch. 1 (IP) table 3: 0.12656 psi at 41 °F;
/// as quoted in psychrolib 2.5.0's tests).
TEST(Changes, ARoomIsWarmerAtNightWithTheWaterOfOutdoors) {
  job::Job job = through_a_room();
  KnownRoom room = *job.room;
  room.room.moisture.reset();
  job.air = job.air_in(room);
  job.room = std::make_shared<const KnownRoom>(room);
  const ChangeSizes sizes = warm(job, Heated::at_night);
  ASSERT_EQ(sizes.size(), 4U);
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const Both air = changed(job, sizes[i]);
    for (const Instant t : half_hours()) {
      const Air before = air.before->at(t), after = air.after->at(t);
      EXPECT_EQ(after.temperature, heated_hour(t) ? Celsius(18) : std::max(before.temperature, Celsius(floors[i])));
      EXPECT_NEAR(climate::vapour_pressure(after).value(), 0.8 * 872.6, 0.5);
    }
  }
}

/// Newton's law of cooling: with a lift of 11 K a heater that never rests holds the room 11 K above outdoors, 5 °C.
TEST(Changes, AHeaterDoesWhatItCan) {
  const job::Job weak = through_a_room({}, climate::Heater{Kelvins(11)});
  const ChangeSizes sizes = warm(weak, Heated::throughout);
  ASSERT_FALSE(sizes.empty());
  EXPECT_EQ(text(weak, sizes.back()), "set the heater to 22 °C or more at all hours; the shop still falls to 16 °C");
  const Both air = changed(weak, sizes.back());
  for (const Instant t : half_hours()) EXPECT_NEAR(air.after->at(t).temperature.value(), 16, 0.01);
}

TEST(Changes, ADehumidifierDriesAndChangesNoTemperature) {
  const job::Job none = through_a_room({}, {}, "14,85");
  const job::Job has = through_a_room(climate::Dehumidifier{RelativeHumidity(0.7), KilogramsPerHour(0.05)}, {}, "14,85");
  const Both large = changed(none, dry(none).back()), small = changed(has, dry(has).back());
  bool too_small = false;
  for (const Instant t : half_hours()) {
    EXPECT_EQ(large.after->at(t).temperature, large.before->at(t).temperature);
    EXPECT_EQ(small.after->at(t).temperature, small.before->at(t).temperature);
    EXPECT_LE(large.after->at(t).humidity.value(), 0.40 + 0.03) << "within a step of ten minutes while the room cools";
    too_small = too_small || small.after->at(t).humidity > RelativeHumidity(0.5);
  }
  EXPECT_TRUE(too_small) << "its own capacity stays";
  // On a Sunday at 14 °C: 8.46 g/kg outdoors (85 %) less 3.95 (40 %), times 73.3 kg of air an hour, and 100 g/h, for 24 h; saturation 1598.8 Pa,
  // from memory.
  EXPECT_EQ(text(none, dry(none).back()), "a dehumidifier set to 40 % RH; it takes out up to 10.3 l a day");
  EXPECT_EQ(text(has, dry(has).back()), "set the dehumidifier to 40 % RH; it takes out up to 1.2 l a day") << "50 g/h";
  EXPECT_FALSE(dehumidifier_at(has, RelativeHumidity(0.7))) << "already set so dry";
}

/// Between readings from Monday to Wednesday the air is as it was read, whatever is changed.
TEST(Changes, NothingChangesWhatALoggerHasRead) {
  job::Job job = stated();
  auto log = std::make_shared<climate::Log>();
  log->usual_step = Minutes(30);
  for (Instant t = monday(); t <= monday() + date::days(2); t += Minutes(30))
    log->readings.push_back({t, Celsius(9), RelativeHumidity(0.8)});
  job.air = [log, next = job.air](Instant from, Instant until) { return std::make_unique<climate::LoggedAir>(log, next(from, until)); };
  for (const Change& change : {warm(job, Heated::throughout).back(), warm(job, Heated::at_night).back(), dry(job).back()}) {
    const Both air = changed(job, change);
    bool later = false;
    for (const Instant t : half_hours()) {
      const Air before = air.before->at(t), after = air.after->at(t);
      if (t > monday() + date::days(2)) {
        later = later || before.temperature != after.temperature || before.humidity != after.humidity;
        continue;
      }
      EXPECT_EQ(after.temperature, Celsius(9));
      EXPECT_EQ(after.humidity, RelativeHumidity(0.8));
    }
    EXPECT_TRUE(later);
  }
}

/// Later by the wall clock, over the beginning of summer time on 28 March 2027 too.
TEST(Changes, ALaterStartIsLaterAndNothingElse) {
  job::Job job = make_job();
  job.shop.zone = Zone::find("Europe/Berlin").value();
  const Instant start = job.shop.zone.to_instant(LocalTime(LocalDay(date::year(2027) / 3 / 22)) + std::chrono::hours(8));
  job.order.start = start;
  for (const Change& change : later_start(job, {start})) {
    job::Job other = job;
    Instant from = start;
    change.make(other, from);
    EXPECT_GT(from, start);
    EXPECT_EQ(other.order.start, from);
    EXPECT_EQ(clock_time(job.shop.zone.to_local(from)), "08:00");
    EXPECT_EQ(text(job, change), "start on " + day_and_time(job.shop.zone.to_local(from)));
    other.order.start = start;
    EXPECT_EQ(all_but_air(other), all_but_air(job));
  }
}

TEST(Changes, AnOrderThatBeginsLaterIsNotBegunBefore) {
  job::Job job = make_job();
  job.order.start = monday() + date::days(9);
  for (const Change& change : later_start(job, request)) {
    job::Job other = job;
    Instant from = request.from;
    change.make(other, from);
    EXPECT_GE(*other.order.start, *job.order.start);
  }
}

/// Oil in the cold waits for warmth; drier air does nothing for a clock that knows no humidity.
TEST(Changes, WhatDoesNotHelpIsNotTold) {
  tests::JobKnobs knobs;
  knobs.air = {Celsius(13), RelativeHumidity(0.6)};
  job::Job job = make_job(knobs);
  job.catalogue.products.at("clear").mechanism = finish::Mechanism::oxidative;
  const job::Plan plan = make_plan(job, request);
  ASSERT_EQ(plan.status, job::Status::planned);
  ASSERT_FALSE(dryness(job, plan).empty()) << "it is tried";
  const job::Advice advice = advise_on_air(job, {request.from, job::AdviceDepth::thorough}, plan);
  ASSERT_FALSE(advice.suggestions.empty());
  for (const job::Suggestion& help : advice.suggestions) EXPECT_TRUE(help.words.starts_with("keep the shop at ")) << help.words;
}

}  // namespace
}  // namespace coatday::planner
