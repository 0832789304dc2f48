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

  void through(AirHours& shop, Instant from, Instant until) {
    for (const wood::AirSpan& hour : shop.between(from, until)) through(hour, from, until);
  }
  /// As much of the hour as lies between the two: thin wood changes within minutes.
  void through(const wood::AirSpan& hour, Instant from, Instant until) {
    const wood::FaceCondition open{hour.equilibrium, wood::still_air};
    const auto lies = std::min(hour.until, until) - std::max(hour.from, from);
    slab_.advance({at_test_ * hour.diffusion, open, open}, wood::Seconds(std::chrono::duration<double>(lies).count()));
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

/// Tells of each hour from then on how moist the wood is when it begins and whether the wood is at rest all through it, until it is told to
/// stop or there is no more to tell.
template <typename Tell>
void watch(Lying wood, MoistureContent band, Instant from, Instant until, AirHours& shop, Tell tell) {
  for (Instant chunk = std::chrono::floor<std::chrono::hours>(from); chunk < until; chunk += usual_lay) {
    const auto hours = shop.between(chunk, chunk + usual_lay + felt_for);
    const std::vector<double> sum = sums(hours);
    const auto rests = [&](std::size_t i) {
      const MoistureContent felt((sum[i + felt_hours] - sum[i]) / static_cast<double>(felt_hours));
      return near(wood.mean(), felt, band);
    };
    for (std::size_t i = 0; i + felt_hours < hours.size(); ++i) {
      const bool at_first = rests(i);
      const MoistureContent moisture = wood.mean();
      wood.through(hours[i], from, hours[i].until);
      if (!tell(hours[i], moisture, at_first && rests(i + 1))) return;
    }
  }
}

std::optional<Instant> comes_to_rest(Lying wood, MoistureContent band, Instant from, AirHours& shop) {
  std::optional<Instant> first;
  watch(std::move(wood), band, from, from + longest_rest, shop, [&](const wood::AirSpan& hour, MoistureContent, bool rests) {
    if (rests) first = std::max(from, hour.from);
    return !rests;
  });
  return first;
}

/// As it was measured or, where it was not, as the air was since it came here.
Lying bare(const piece::Part& part, const std::optional<Measured>& meter, Instant from, AirHours& shop, wood::Diffusivity at_test) {
  const Instant since = meter ? meter->at : from - usual_lay;
  Lying wood(piece::section(part.shape).thickness, meter ? meter->mean : shop.equilibrium(since, from), at_test);
  wood.through(shop, since, from);
  return wood;
}

wood::Diffusivity middle() { return wood::diffusion_across(wood::film_test_temperature).middle; }

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

std::vector<BareHour> bare_hours(const piece::Part& part, MoistureContent band, Instant from, Instant until, AirHours& shop) {
  std::vector<BareHour> hours;
  const Lying wood = bare(part, measured(part.solid, from), from, shop, middle());
  watch(wood, band, from, until, shop, [&](const wood::AirSpan& hour, MoistureContent moisture, bool rests) {
    hours.push_back({hour.from, hour.until, moisture, rests});
    return hour.until < until;
  });
  return hours;
}

std::vector<RestSpan> spans_at_rest(std::span<const BareHour> hours) {
  std::vector<RestSpan> spans;
  for (const BareHour& hour : hours) {
    if (!hour.at_rest) continue;
    if (spans.empty() || spans.back().until != hour.from) spans.push_back({hour.from, hour.from});
    spans.back().until = hour.until;
  }
  return spans;
}

MoistureRange range_from(std::span<const BareHour> hours, Instant begin) {
  MoistureRange range;
  for (const BareHour& hour : hours) {
    if (hour.until <= begin) continue;
    range.driest = std::min(range.driest, hour.moisture);
    range.dampest = std::max(range.dampest, hour.moisture);
  }
  return range;
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
  const auto at_test = wood::diffusion_across(wood::film_test_temperature);
  std::optional<Instant>* const when[] = {&ready.ready_at.slow, &ready.ready_at.expected, &ready.ready_at.fast};
  const wood::Diffusivity how_fast[] = {at_test.low, at_test.middle, at_test.high};
  for (std::size_t i = 0; i < 3; ++i) {
    if (!meter && i != 1) continue;  // what is assumed has no spread worth telling
    Lying wood = bare(part, meter, from, shop, how_fast[i]);
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
