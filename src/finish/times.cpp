#include "finish/times.h"

#include <algorithm>

#include "finish/application_limits.h"

namespace coatday::finish {
namespace {

/// Steady for as long as any hold asks.
class Steady final : public climate::AirSource {
 public:
  explicit Steady(const climate::Air& air) : air_(air) {}
  [[nodiscard]] climate::Air at(Instant) const override { return air_; }
  [[nodiscard]] std::string describe(Units) const override { return "steady air"; }

 private:
  climate::Air air_;
};

std::optional<std::string> may_not_go_on(const Product& product, const climate::Air& air, Units units) {
  const Instant start{};
  const Instant end = later(start, product.limits.hold) + 2 * climate::AirSeries::step;
  return limit_exceeded(product, climate::AirSeries(Steady(air), start, end), start, start, units);
}

/// The laws that lead to a stage, one after the other, with the hours that each has to count in the record's air.
struct Leg {
  Law law;
  Hours need;
};
std::vector<Leg> way_to(const Product& product, Stage stage) {
  const StageHours& hours = product.reference().hours;
  const std::optional<Law> law = product.law(stage);
  if (!hours[stage] || !law) return {};
  const std::optional<Law> drying = product.law(Stage::recoat);
  const bool waits = clock_of(stage) == Clock::cure && law->cure_starts_at_recoat && hours[Stage::recoat] && drying;
  if (!waits) return {{*law, *hours[stage]}};
  return {{*drying, *hours[Stage::recoat]}, {*law, *hours[stage] - *hours[Stage::recoat]}};
}

/// How far the ends of the ranges of its laws put a stage off, all of them the same way.
double spread_by_laws(const std::vector<Leg>& way, const climate::Air& air, const climate::Air& reference, Side side, Hours expected) {
  double spread = 1;
  for (const bool upper : {false, true}) {
    Hours other{0};
    for (const Leg& leg : way) {
      const bool ranges = leg.law.least < leg.law.most;
      const Law end = ranges ? with(leg.law, upper ? leg.law.most : leg.law.least) : leg.law;
      other += leg.need / rate(end, air, reference, side);
    }
    spread = std::max({spread, other / expected, expected / other});
  }
  return spread;
}

}  // namespace

bool StageTimes::any() const {
  return std::any_of(times.values.begin(), times.values.end(), [](const auto& time) { return time.has_value(); });
}

StageTimes times_in(const Product& product, const climate::Air& air, Units units) {
  StageTimes result;
  result.may_not_go_on = may_not_go_on(product, air, units);
  const double unsure = uncertainty(air);
  for (std::size_t s = 0; s < stage_count; ++s) {
    const auto stage = static_cast<Stage>(s);
    Hours expected{0};
    const std::vector<Leg> way = way_to(product, stage);
    for (const Leg& leg : way) {
      if (!result.refused[stage]) result.refused[stage] = beyond(leg.law, air, units);
      const Side side = stage == Stage::recoat_close ? Side::fast : Side::slow;
      const double k = rate(leg.law, air, product.reference().air, side);
      if (!(k > 0) && !result.refused[stage]) result.refused[stage] = "the clock stands still in this air";
      if (!result.refused[stage]) expected += leg.need / k;
    }
    if (way.empty() || result.refused[stage]) continue;
    const Side side = stage == Stage::recoat_close ? Side::fast : Side::slow;
    const double by_laws = spread_by_laws(way, air, product.reference().air, side, expected);
    result.times[stage] = StageTime{expected / unsure, expected, expected * unsure, by_laws};
  }
  return result;
}

}  // namespace coatday::finish
