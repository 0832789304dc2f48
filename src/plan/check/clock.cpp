#include "plan/check/clock.h"

#include <algorithm>
#include <cmath>

namespace coatday::plan::checking {

using finish::Clock;
using finish::Product;
using finish::Side;
using finish::Stage;

const std::vector<double>& Clocks::bare(const finish::Law& law, const climate::Air& reference, Side side) const {
  for (const Bare& known : bare_) {
    const bool same_air = known.reference.temperature == reference.temperature && known.reference.humidity == reference.humidity;
    if (known.law == law && known.side == side && same_air) return known.rates;
  }
  const finish::Rate rate(law, reference, side);
  Bare fresh{law, reference, side, {}};
  for (const climate::AirRow& row : air_.rows()) fresh.rates.push_back(rate(row.air));
  bare_.push_back(std::move(fresh));
  return bare_.back().rates;
}

const std::vector<double>* Clocks::rates(const Key& key) const {
  const auto found = rates_.find(key);
  if (found != rates_.end()) return &found->second;
  const auto& [product, stage, side, estimate] = key;
  const auto law = stage ? product->law(*stage) : product->law(Clock::drying);
  if (!law) return nullptr;
  const std::vector<double>& bare_rates = bare(*law, product->reference().air, side);
  std::vector<double> values;
  for (std::size_t r = 0; r < bare_rates.size(); ++r) {
    const double unsure = finish::uncertainty(air_.rows()[r].air);
    values.push_back(bare_rates[r] * (estimate == Estimate::late ? 1 / unsure : estimate == Estimate::early ? unsure : 1));
  }
  return &rates_.emplace(key, std::move(values)).first->second;
}

std::optional<Instant> Clocks::run(const Key& key, Instant from, Hours need) const {
  const std::vector<double>* rate = rates(key);
  if (rate == nullptr || from < air_.begin() || from >= air_.end()) return std::nullopt;
  constexpr double noise = 1e-6;  // seconds
  double left = need.count() * 3600;
  Instant at = from;
  for (std::size_t row = air_.index(from); row < rate->size(); ++row) {
    if (left <= noise) return at;
    const Instant row_end = air_.rows()[row].from + climate::AirSeries::step;
    const double gain = (*rate)[row] * static_cast<double>((row_end - at).count());
    if (gain >= left - noise) return at + std::chrono::seconds(static_cast<std::int64_t>(std::ceil(left / (*rate)[row] - noise)));
    left -= gain;
    at = row_end;
  }
  return std::nullopt;
}

std::optional<Instant> Clocks::dried(const Product& product, Hours need, Instant applied, Estimate estimate) const {
  return run({&product, std::nullopt, Side::slow, estimate}, applied, need);
}

namespace {

/// What another film makes of an hour count of the cure clock.
Hours moved(const finish::StageHours& hours, Stage stage, double drying) {
  if (stage == Stage::recoat_close) return drying < 1 ? (drying - 1) * hours[Stage::recoat].value_or(Hours(0)) : Hours(0);
  if (drying <= 1) return Hours(0);
  Hours longest{0};
  for (std::size_t s = 0; s < finish::stage_count; ++s) {
    if (finish::clock_of(static_cast<Stage>(s)) == Clock::drying) longest = std::max(longest, hours.values[s].value_or(Hours(0)));
  }
  return (drying - 1) * longest;
}

}  // namespace

std::optional<Instant> Clocks::reached(const Product& product, Stage stage, Instant applied, Estimate estimate, double drying) const {
  const finish::StageHours& hours = product.reference().hours;
  if (!hours[stage]) return std::nullopt;
  // A window must not be promised longer than it may be: fast clocks.
  const Side side = stage == Stage::recoat_close ? Side::fast : Side::slow;
  const bool dries = finish::clock_of(stage) == Clock::drying;
  const Hours need = dries ? drying * *hours[stage] : *hours[stage] + moved(hours, stage, drying);
  const auto law = product.law(finish::clock_of(stage));
  const bool waits = law && !dries && law->cure_starts_at_recoat && hours[Stage::recoat];
  if (!waits) return run({&product, stage, side, estimate}, applied, need);
  Hours to_recoat = drying * *hours[Stage::recoat];
  if (stage == Stage::recoat_close && to_recoat > need) to_recoat = need;  // the window ends before it opens
  const auto recoat = run({&product, Stage::recoat, side, estimate}, applied, to_recoat);
  if (!recoat) return std::nullopt;
  return run({&product, stage, side, estimate}, *recoat, need - to_recoat);
}

}  // namespace coatday::plan::checking
