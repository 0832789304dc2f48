#include "planner/wood/readiness.h"

#include <algorithm>
#include <cmath>

#include <fmt/core.h>

#include "piece/heat.h"

namespace coatday::planner {
namespace {

/// Bare wood through the shop's air.
class Lying {
 public:
  Lying(Metres thickness, MoistureContent initial, wood::Diffusivity at_test) : slab_(thickness, initial), at_test_(at_test) {}

  void through(std::span<const wood::AirSpan> hours) {
    for (const wood::AirSpan& hour : hours) through(hour);
  }
  void through(const wood::AirSpan& hour) {
    const wood::FaceCondition open{hour.equilibrium, wood::still_air};
    slab_.advance({at_test_ * hour.diffusion, open, open}, wood::Seconds(std::chrono::duration<double>(hour.until - hour.from).count()));
  }
  [[nodiscard]] MoistureContent mean() const { return slab_.mean(); }

 private:
  wood::Slab slab_;
  wood::Diffusivity at_test_;
};

bool near(MoistureContent a, MoistureContent b, MoistureContent band) { return std::abs(a.value() - b.value()) <= band.value(); }

/// Sums of equilibria, so that a week's mean is two look-ups.
std::vector<double> sums(std::span<const wood::AirSpan> hours) {
  std::vector<double> all{0};
  for (const wood::AirSpan& hour : hours) all.push_back(all.back() + hour.equilibrium.value());
  return all;
}

constexpr std::size_t felt_hours = std::chrono::hours(felt_for).count();

/// Tells of each hour from then on whether the wood is at rest in it, until it is told to stop or there is no more to tell.
template <typename Tell>
void watch(Lying wood, MoistureContent band, Instant from, Instant until, AirHours& shop, Tell tell) {
  for (Instant chunk = from; chunk < until; chunk += usual_lay) {
    const auto hours = shop.between(chunk, chunk + usual_lay + felt_for);
    const std::vector<double> sum = sums(hours);
    for (std::size_t i = 0; i + felt_hours < hours.size(); ++i) {
      const MoistureContent felt((sum[i + felt_hours] - sum[i]) / static_cast<double>(felt_hours));
      if (!tell(hours[i], near(wood.mean(), felt, band))) return;
      wood.through(hours[i]);
    }
  }
}

std::optional<Instant> comes_to_rest(Lying wood, MoistureContent band, Instant from, AirHours& shop) {
  std::optional<Instant> first;
  watch(std::move(wood), band, from, from + longest_rest, shop, [&](const wood::AirSpan& hour, bool rests) {
    if (rests) first = std::max(from, hour.from);
    return !rests;
  });
  return first;
}

}  // namespace

std::string moisture_text(MoistureContent moisture) { return fmt::format("{:.1f} %", 100 * moisture.value()); }

std::optional<Measured> measured(const piece::Solid& solid, Instant from) {
  if (solid.readings.empty()) return std::nullopt;
  const auto at = [from](const piece::MeterReading& reading) { return reading.at.value_or(from); };
  Instant latest = at(solid.readings.front());
  for (const piece::MeterReading& reading : solid.readings) latest = std::max(latest, at(reading));
  Measured result{{}, MoistureContent(1), MoistureContent(0), latest};
  int count = 0;
  for (const piece::MeterReading& reading : solid.readings) {
    if (latest - at(reading) >= std::chrono::hours(24)) continue;
    result.mean += reading.moisture;
    result.driest = std::min(result.driest, reading.moisture);
    result.dampest = std::max(result.dampest, reading.moisture);
    ++count;
  }
  result.mean = result.mean / count;
  result.at = std::clamp(latest, from - longest_rest, from);  // what lay here for a year is at rest whatever it was
  return result;
}

Instant known_since(const job::Job& job, Instant from) {
  Instant since = from - usual_lay;
  for (const job::OrderPiece& piece : job.order.pieces) {
    for (const piece::Part& part : piece.piece.parts) {
      if (const auto meter = measured(part.solid, from)) since = std::min(since, meter->at);
    }
  }
  return since;
}

std::vector<RestSpan> spans_at_rest(const piece::Part& part, MoistureContent band, Instant from, Instant until, AirHours& shop) {
  const Measured meter = *measured(part.solid, from);
  Lying wood(piece::section(part.shape).thickness, meter.mean, wood::diffusion_across(wood::film_test_temperature).middle);
  wood.through(shop.between(meter.at, from));
  std::vector<RestSpan> spans;
  watch(std::move(wood), band, from, until, shop, [&](const wood::AirSpan& hour, bool rests) {
    if (!rests) return true;
    if (spans.empty() || spans.back().until != hour.from) spans.push_back({hour.from, hour.from});
    spans.back().until = hour.until;
    return true;
  });
  return spans;
}

job::WoodReady readiness(const piece::Part& part, MoistureContent band, Instant from, AirHours& shop) {
  const auto meter = measured(part.solid, from);
  job::WoodReady ready;
  ready.measured = meter.has_value();
  ready.lay_since = meter ? std::min(meter->at, from) : from - usual_lay;
  ready.band = band;
  if (meter && meter->driest < meter->dampest) {
    ready.drier = meter->driest;
    ready.damper = meter->dampest;
  }
  const MoistureContent initial = meter ? meter->mean : shop.equilibrium(ready.lay_since, from);
  const Metres thickness = piece::section(part.shape).thickness;
  const auto at_test = wood::diffusion_across(wood::film_test_temperature);
  std::optional<Instant>* const when[] = {&ready.ready_at.slow, &ready.ready_at.expected, &ready.ready_at.fast};
  const wood::Diffusivity how_fast[] = {at_test.low, at_test.middle, at_test.high};
  for (std::size_t i = 0; i < 3; ++i) {
    if (!meter && i != 1) continue;  // what is assumed has no spread worth telling
    Lying wood(thickness, initial, how_fast[i]);
    wood.through(shop.between(ready.lay_since, from));
    if (i == 1) ready.now = wood.mean();
    *when[i] = comes_to_rest(std::move(wood), band, from, shop);
  }
  if (!meter) ready.ready_at.fast = ready.ready_at.slow = ready.ready_at.expected;
  if (ready.ready_at.fast > ready.ready_at.slow) std::swap(ready.ready_at.fast, ready.ready_at.slow);
  ready.shop = shop.equilibrium(from, from + felt_for);
  ready.ready = ready.ready_at.expected && *ready.ready_at.expected <= from;
  return ready;
}

}  // namespace coatday::planner
