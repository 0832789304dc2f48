// Laws that hold in any air.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "finish/application_limits.h"
#include "finish/times.h"
#include "tests/finish/samples.h"

namespace coatday::finish {
namespace {

using climate::Air;
using climate::AirSeries;
using test::monday;
using test::series;

Air any_air() { return test::air(*rc::gen::inRange(-50, 450) / 10.0, *rc::gen::inRange(5, 101)); }

std::vector<Air> any_rows() {
  return *rc::gen::container<std::vector<Air>>(*rc::gen::inRange<std::size_t>(1, 120), rc::gen::exec(any_air));
}

Mechanism any_mechanism() { return static_cast<Mechanism>(*rc::gen::inRange<std::size_t>(0, words<Mechanism>().size())); }

Instant any_time(std::size_t rows) { return monday + std::chrono::seconds(*rc::gen::inRange<std::size_t>(0, 1800 * rows + 1)); }

/// Row by row, each with the share of it that lies in the span.
double naive(const AirSeries& air, const Law& law, Side side, Instant from, Instant until) {
  double hours = 0;
  for (const climate::AirRow& row : air.rows()) {
    const auto overlap = std::min<Instant>(row.from + AirSeries::step, until) - std::max(row.from, from);
    if (overlap.count() > 0) hours += Hours(overlap).count() * rate(law, row.air, reference_air, side);
  }
  return hours;
}

RC_GTEST_PROP(ClockIntegral, AgreesWithANaiveLoop, ()) {
  const std::vector<Air> rows = any_rows();
  const AirSeries air = series(rows);
  const Law law = *default_law(any_mechanism(), Clock::drying);
  const Side side = *rc::gen::element(Side::slow, Side::fast);
  const ClockIntegral clock(air, law, reference_air, side, Estimate::expected);
  const Instant a = any_time(rows.size());
  const Instant b = any_time(rows.size());
  const auto [from, until] = std::minmax(a, b);
  RC_ASSERT(std::abs(clock.between(from, until).count() - naive(air, law, side, from, until)) < 1e-9);
}

RC_GTEST_PROP(ClockIntegral, ReachesNoSecondTooEarlyAndNoSecondTooLate, ()) {
  const std::vector<Air> rows = any_rows();
  const AirSeries air = series(rows);
  const Law law = *default_law(any_mechanism(), Clock::drying);
  const ClockIntegral clock(air, law, reference_air, Side::slow, Estimate::expected);
  const Instant from = any_time(rows.size());
  const Hours need(*rc::gen::inRange(1, 20000) / 1000.0);
  const auto reached = clock.reached(from, need);
  if (!reached) {
    RC_ASSERT(naive(air, law, Side::slow, from, air.end()) < need.count());
    return;
  }
  RC_ASSERT(naive(air, law, Side::slow, from, *reached) > need.count() - 1e-9);
  RC_ASSERT(naive(air, law, Side::slow, from, *reached - std::chrono::seconds(1)) < need.count() + 1e-9);
}

/// Not reached is later than any time.
Instant or_never(std::optional<Instant> t) { return t.value_or(Instant::max()); }

RC_GTEST_PROP(CureClock, AColderHourNeverDriesEarlier, ()) {
  std::vector<Air> rows = any_rows();
  const Product p = test::product(any_mechanism());
  const CureClock before(p, series(rows), Estimate::expected);
  const std::size_t hour = *rc::gen::inRange<std::size_t>(0, rows.size());
  const Kelvins colder(*rc::gen::inRange(1, 150) / 10.0);
  for (std::size_t r = hour; r < std::min(hour + 2, rows.size()); ++r) rows[r].temperature = rows[r].temperature - colder;
  const CureClock after(p, series(rows), Estimate::expected);
  for (std::size_t s = 0; s < stage_count; ++s) {
    const auto stage = static_cast<Stage>(s);
    RC_ASSERT(or_never(after.reached(stage, monday)) >= or_never(before.reached(stage, monday)));
  }
}

RC_GTEST_PROP(CureClock, LateIsNeverEarlierAndEarlyIsNeverLater, ()) {
  const std::vector<Air> rows = any_rows();
  const Product p = test::product(any_mechanism());
  const CureClock nominal(p, series(rows), Estimate::expected);
  const CureClock late(p, series(rows), Estimate::slow);
  const CureClock early(p, series(rows), Estimate::fast);
  const Instant applied = any_time(rows.size());
  for (std::size_t s = 0; s < stage_count; ++s) {
    const auto stage = static_cast<Stage>(s);
    RC_ASSERT(or_never(late.reached(stage, applied)) >= or_never(nominal.reached(stage, applied)));
    RC_ASSERT(or_never(early.reached(stage, applied)) <= or_never(nominal.reached(stage, applied)));
  }
}

// ASTM D1640 names the stages of drying in an order; no air turns it round.
RC_GTEST_PROP(CureClock, StagesComeInTheirOrder, ()) {
  const std::vector<Air> rows = any_rows();
  const Product p = test::product(any_mechanism());
  const CureClock clock(p, series(rows), *rc::gen::element(Estimate::expected, Estimate::slow, Estimate::fast));
  const Instant applied = any_time(rows.size());
  const auto in_order = [&](std::initializer_list<Stage> stages) {
    Instant last = applied;
    for (const Stage stage : stages) {
      if (!clock.has(stage)) continue;
      const Instant t = or_never(clock.reached(stage, applied));
      RC_ASSERT(t >= last);
      last = t;
    }
  };
  in_order({Stage::tack_free, Stage::handle, Stage::sand, Stage::recoat});
  in_order({Stage::pack, Stage::light_use, Stage::full_cure});
  if (p.mechanism == Mechanism::water) in_order({Stage::recoat, Stage::pack});
}

// The rate rises ever faster with the temperature, so a mean temperature understates what a varying one does: mean kinetic temperature.
RC_GTEST_PROP(Rate, OfTheMeanTemperatureIsNeverAboveTheMeanRate, ()) {
  Law law;
  law.activation = KilojoulesPerMole(*rc::gen::inRange(20, 100));
  const auto temperatures = *rc::gen::container<std::vector<int>>(*rc::gen::inRange<std::size_t>(1, 50), rc::gen::inRange(-50, 450));
  double mean = 0, mean_rate = 0;
  for (const int tenths : temperatures) {
    mean += tenths / 10.0 / static_cast<double>(temperatures.size());
    mean_rate += rate(law, test::air(tenths / 10.0, 50), reference_air) / static_cast<double>(temperatures.size());
  }
  RC_ASSERT(rate(law, test::air(mean, 50), reference_air) <= mean_rate * (1 + 1e-12));
}

// The clock gives whole seconds, rounded up at recoat and at the stage.
RC_GTEST_PROP(TimesIn, AreThoseOfTheClockInConstantAir, ()) {
  const Air steady = test::air(*rc::gen::inRange(160, 300) / 10.0, *rc::gen::inRange(31, 70));
  const Product p = test::product(any_mechanism());
  const AirSeries air = series(test::constant(24 * 14, steady));
  const StageTimes times = times_in(p, steady);
  using Side = std::pair<Estimate, Hours StageTime::*>;
  for (const auto& [estimate, side] :
       {Side{Estimate::fast, &StageTime::fast}, Side{Estimate::expected, &StageTime::expected}, Side{Estimate::slow, &StageTime::slow}}) {
    const CureClock clock(p, air, estimate);
    for (std::size_t s = 0; s < stage_count; ++s) {
      const auto& time = times.times.values[s];
      const auto reached = clock.reached(static_cast<Stage>(s), monday);
      if (time && reached) RC_ASSERT(std::abs((Hours(*reached - monday) - (*time).*side).count()) <= 2.01 / 3600);
      if (time) RC_ASSERT(reached || (*time).*side > Hours(24 * 14));
    }
  }
}

RC_GTEST_PROP(LimitExceeded, HasNothingToSayWhereAllRowsAreAllowed, ()) {
  const std::vector<Air> rows = *rc::gen::container<std::vector<Air>>(*rc::gen::inRange<std::size_t>(1, 40), rc::gen::exec([] {
    return test::air(*rc::gen::inRange(16, 70) / 2.0, *rc::gen::inRange(30, 90));
  }));
  const AirSeries air = series(rows);
  Product p = test::product(any_mechanism());
  p.limits.hold = Hours(*rc::gen::inRange(0, 24) / 4.0);
  p.limits.hold_above = Celsius(*rc::gen::inRange(5, 15));
  if (*rc::gen::arbitrary<bool>()) p.limits.blush_margin = Kelvins(*rc::gen::inRange(1, 12));
  const std::vector<bool> allowed = allowed_rows(p, air);

  const std::size_t row = *rc::gen::inRange<std::size_t>(0, rows.size());
  const Instant start = air.rows()[row].from;
  RC_ASSERT(allowed[row] == !limit_exceeded(p, air, start, start + AirSeries::step));
  if (allowed[row]) {
    const std::chrono::seconds a(*rc::gen::inRange(0, 1800)), b(*rc::gen::inRange(0, 1801));
    RC_ASSERT(!limit_exceeded(p, air, start + std::min(a, b), start + std::max(a, b)));
  }
}

}  // namespace
}  // namespace coatday::finish
