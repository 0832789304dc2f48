#include "finish/clock.h"

#include <algorithm>
#include <stdexcept>

namespace coatday::finish {
namespace {

using climate::AirSeries;

constexpr double noise = 1e-10;  // hours: what rounding of the sums may add, far below a second

constexpr Hours since(Instant from, Instant until) { return until - from; }

}  // namespace

const std::vector<double>& Rates::of(const Law& law, const climate::Air& reference, Side side) {
  const auto same = [&](const Entry& e) {
    return e.law == law && e.side == side && e.reference.temperature == reference.temperature && e.reference.humidity == reference.humidity;
  };
  const auto known = std::find_if(entries_.begin(), entries_.end(), same);
  if (known != entries_.end()) return known->rates;
  const Rate rate(law, reference, side);
  std::vector<double> rates;
  rates.reserve(air_->rows().size());
  for (const climate::AirRow& row : air_->rows()) rates.push_back(rate(row.air));
  entries_.push_back({law, reference, side, std::move(rates)});
  return entries_.back().rates;
}

ClockIntegral::ClockIntegral(const AirSeries& air, const Law& law, const climate::Air& reference, Side side, bool divide_by_uncertainty) {
  Rates rates(air);
  *this = ClockIntegral(rates, law, reference, side, divide_by_uncertainty);
}

ClockIntegral::ClockIntegral(Rates& rates, const Law& law, const climate::Air& reference, Side side, bool divide_by_uncertainty)
    : begin_(rates.air().begin()) {
  const AirSeries& air = rates.air();
  const std::vector<double>& rate = rates.of(law, reference, side);
  constexpr double row = Hours(AirSeries::step).count();
  sums_.reserve(air.rows().size() + 1);
  sums_.push_back(0);
  long double sum = 0;  // so that months of rows cost no digits
  for (std::size_t r = 0; r < rate.size(); ++r) {
    sum += row * rate[r] / (divide_by_uncertainty ? uncertainty(air.rows()[r].air) : 1);
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

CureClock::Clocks CureClock::clocks(const Product& product, Rates& rates, Side side, Estimate estimate) {
  const auto integral = [&](Clock clock) -> std::optional<ClockIntegral> {
    const std::optional<Law> law = product.law(clock);
    if (!law) return std::nullopt;
    return ClockIntegral(rates, *law, product.reference().air, side, estimate == Estimate::late);
  };
  return {integral(Clock::drying), integral(Clock::cure)};
}

CureClock::CureClock(const Product& product, const AirSeries& air, Estimate estimate) {
  Rates rates(air);
  *this = CureClock(product, rates, estimate);
}

CureClock::CureClock(const Product& product, Rates& rates, Estimate estimate)
    : hours_(product.reference().hours), waiting_(clocks(product, rates, Side::slow, estimate)) {
  const std::optional<Law> cure = product.law(Clock::cure);
  cure_starts_at_recoat_ = cure && cure->cure_starts_at_recoat && has(Stage::recoat);
  if (has(Stage::recoat_close)) closing_ = clocks(product, rates, Side::fast, Estimate::nominal);
}

bool CureClock::has(Stage stage) const {
  const auto& clock = clock_of(stage) == Clock::drying ? waiting_.drying : waiting_.cure;
  return hours_[stage].has_value() && clock.has_value();
}

std::optional<Instant> CureClock::dried(Hours need, Instant applied) const {
  return waiting_.drying ? waiting_.drying->reached(applied, need) : std::nullopt;
}

std::optional<Instant> CureClock::cured(const Clocks& clocks, Hours need, Instant applied) const {
  if (!cure_starts_at_recoat_) return clocks.cure->reached(applied, need);
  const Hours to_recoat = *hours_[Stage::recoat];
  const std::optional<Instant> start = clocks.drying->reached(applied, to_recoat);
  if (!start) return std::nullopt;
  return clocks.cure->reached(*start, need - to_recoat);
}

std::optional<Instant> CureClock::reached(Stage stage, Instant applied) const {
  if (!has(stage)) return std::nullopt;
  const Hours need = *hours_[stage];
  if (clock_of(stage) == Clock::drying) return dried(need, applied);
  return cured(stage == Stage::recoat_close ? closing_ : waiting_, need, applied);
}

}  // namespace coatday::finish
