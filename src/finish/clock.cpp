#include "finish/clock.h"

#include <algorithm>
#include <stdexcept>

#include "finish/film.h"

namespace coatday::finish {
namespace {

using climate::AirSeries;

constexpr double noise = 1e-10;  // hours: what rounding of the sums may add, far below a second

constexpr Hours since(Instant from, Instant until) { return until - from; }

}  // namespace

double RowRates::operator[](std::size_t row) const {
  while (known_.size() <= row) known_.push_back(rate_(air_.rows()[known_.size()].air));
  return known_[row];
}

ClockIntegral::ClockIntegral(const AirSeries& air, const Law& law, const climate::Air& reference, Side side, Estimate estimate)
    : ClockIntegral(std::make_shared<const RowRates>(air, law, reference, side), estimate) {}

ClockIntegral::ClockIntegral(std::shared_ptr<const RowRates> rates, Estimate estimate)
    : rates_(std::move(rates)), estimate_(estimate), begin_(rates_->air().begin()) {}

/// The sums to the end of that row, or of the last.
void ClockIntegral::know(std::size_t row) const {
  constexpr double hours = Hours(AirSeries::step).count();
  const auto air = rates_->air().rows();
  for (std::size_t r = sums_.size() - 1; r <= row && r < air.size(); ++r) {
    sum_ += hours * (*rates_)[r] * weight(estimate_, air[r].air);
    sums_.push_back(static_cast<double>(sum_));
  }
}

double ClockIntegral::sum_at(Instant t) const {
  const double passed = since(begin_, t) / Hours(AirSeries::step);
  if (passed < 0 || passed > static_cast<double>(rows())) throw std::out_of_range("ClockIntegral: no air at that time");
  const auto row = static_cast<std::size_t>(passed);
  know(row);
  if (row == rows()) return sums_.back();
  return sums_[row] + (sums_[row + 1] - sums_[row]) * (passed - static_cast<double>(row));
}

Hours ClockIntegral::between(Instant from, Instant until) const { return Hours(sum_at(until) - sum_at(from)); }

std::optional<Instant> ClockIntegral::reached(Instant from, Hours need) const {
  if (from > begin_ + rows() * std::chrono::seconds(AirSeries::step)) return std::nullopt;
  const double start = sum_at(from);
  if (need.count() <= noise) return from;
  const double target = start + need.count() - noise;
  constexpr std::size_t day = 48;
  while (sums_.back() < target && sums_.size() <= rows()) know(sums_.size() + day);
  const auto first = sums_.begin() + (from - begin_) / AirSeries::step;
  const auto after = std::lower_bound(first, sums_.end(), target);
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
  if (entry == entries_.end())
    entry = entries_.insert(entry, {law, reference, side, std::make_shared<const RowRates>(*air_, law, reference, side), {}});
  Shared& integral = entry->integrals[estimate];
  if (!integral) integral = std::make_shared<const ClockIntegral>(entry->rates, estimate);
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
