#include "finish/clock.h"

#include <algorithm>
#include <stdexcept>

#include "finish/film.h"

namespace coatday::finish {
namespace {

using climate::AirSeries;

constexpr double noise = 1e-10;  // hours: what rounding of the sums may add, far below a second

constexpr Hours since(Instant from, Instant until) { return until - from; }

std::vector<double> rates(const AirSeries& air, const Law& law, const climate::Air& reference, Side side) {
  const Rate rate(law, reference, side);
  std::vector<double> result;
  result.reserve(air.rows().size());
  for (const climate::AirRow& row : air.rows()) result.push_back(rate(row.air));
  return result;
}

}  // namespace

ClockIntegral::ClockIntegral(const AirSeries& air, const Law& law, const climate::Air& reference, Side side, Estimate estimate)
    : ClockIntegral(air, rates(air, law, reference, side), estimate) {}

ClockIntegral::ClockIntegral(const AirSeries& air, const std::vector<double>& rates, Estimate estimate) : begin_(air.begin()) {
  constexpr double row = Hours(AirSeries::step).count();
  sums_.reserve(rates.size() + 1);
  sums_.push_back(0);
  long double sum = 0;  // so that months of rows cost no digits
  for (std::size_t r = 0; r < rates.size(); ++r) {
    sum += row * rates[r] * weight(estimate, air.rows()[r].air);
    sums_.push_back(static_cast<double>(sum));
  }
}

double ClockIntegral::sum_at(Instant t) const {
  const double rows = since(begin_, t) / Hours(AirSeries::step);
  if (rows < 0 || rows > static_cast<double>(sums_.size() - 1)) throw std::out_of_range("ClockIntegral: no air at that time");
  const auto row = static_cast<std::size_t>(rows);
  if (row + 1 == sums_.size()) return sums_.back();
  return sums_[row] + (sums_[row + 1] - sums_[row]) * (rows - static_cast<double>(row));
}

Hours ClockIntegral::between(Instant from, Instant until) const { return Hours(sum_at(until) - sum_at(from)); }

std::optional<Instant> ClockIntegral::reached(Instant from, Hours need) const {
  const Instant end = begin_ + (sums_.size() - 1) * std::chrono::seconds(AirSeries::step);
  if (from > end) return std::nullopt;
  const double start = sum_at(from);
  if (need.count() <= noise) return from;
  const double target = start + need.count() - noise;
  const auto after = std::lower_bound(sums_.begin(), sums_.end(), target);
  if (after == sums_.end()) return std::nullopt;
  const auto row = after - sums_.begin() - 1;  // the sum before it is less, so the clock moves in this row
  const double before = *(after - 1);
  const Hours into_row = Hours(AirSeries::step) * ((target - before) / (*after - before));
  return begin_ + row * std::chrono::seconds(AirSeries::step) + std::chrono::ceil<std::chrono::seconds>(into_row);
}

Integrals::Shared Integrals::of(const Law& law, const climate::Air& reference, Side side, Estimate estimate) {
  const auto same = [&](const Entry& e) {
    return e.law == law && e.side == side && e.reference.temperature == reference.temperature && e.reference.humidity == reference.humidity;
  };
  auto entry = std::find_if(entries_.begin(), entries_.end(), same);
  if (entry == entries_.end()) entry = entries_.insert(entry, {law, reference, side, rates(*air_, law, reference, side), {}});
  Shared& integral = entry->integrals[estimate];
  if (!integral) integral = std::make_shared<const ClockIntegral>(*air_, entry->rates, estimate);
  return integral;
}

CureClock::CureClock(const Product& product, const AirSeries& air, Estimate estimate) {
  Integrals integrals(air);
  *this = CureClock(product, integrals, estimate);
}

CureClock::CureClock(const Product& product, Integrals& integrals, Estimate estimate) : hours_(product.reference().hours) {
  const climate::Air& reference = product.reference().air;
  const auto integral = [&](const std::optional<Law>& law, Side side) {
    return law ? integrals.of(*law, reference, side, estimate) : nullptr;
  };
  for (std::size_t s = 0; s < stage_count; ++s) {
    const auto stage = static_cast<Stage>(s);
    if (hours_[stage]) clocks_[stage] = integral(product.law(stage), stage == Stage::recoat_close ? Side::fast : Side::slow);
  }
  drying_ = integral(product.law(Clock::drying), Side::slow);
  const std::optional<Law> cure = product.law(Clock::cure);
  if (!cure || !cure->cure_starts_at_recoat || !has(Stage::recoat)) return;
  to_recoat_ = clocks_[Stage::recoat];
  if (has(Stage::recoat_close)) to_recoat_fast_ = integral(product.law(Stage::recoat), Side::fast);
}

std::optional<Instant> CureClock::dried(Hours need, Instant applied) const {
  return drying_ ? drying_->reached(applied, need) : std::nullopt;
}

std::optional<Instant> CureClock::reached(Stage stage, Instant applied, double drying_factor) const {
  if (!has(stage)) return std::nullopt;
  const Hours need = hours_of_film(hours_, stage, drying_factor);
  if (clock_of(stage) == Clock::drying || !to_recoat_) return clocks_[stage]->reached(applied, need);
  Hours to_recoat = hours_of_film(hours_, Stage::recoat, drying_factor);
  if (stage == Stage::recoat_close) to_recoat = std::min(to_recoat, need);  // a thick film may miss its window
  const std::optional<Instant> start = (stage == Stage::recoat_close ? to_recoat_fast_ : to_recoat_)->reached(applied, to_recoat);
  return start ? clocks_[stage]->reached(*start, need - to_recoat) : std::nullopt;
}

}  // namespace coatday::finish
