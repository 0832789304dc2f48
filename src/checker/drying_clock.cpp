#include "checker/drying_clock.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace coatday::checker {

using finish::Clock;
using finish::Product;
using finish::Side;
using finish::Stage;

Clocks::Bare* Clocks::bare(const Key& key) const {
  const auto found = laws_.find(key);
  if (found != laws_.end()) return found->second;
  const auto& [product, stage, side] = key;
  const auto law = stage ? product->law(*stage) : product->law(Clock::drying);
  if (!law) return laws_[key] = nullptr;
  const climate::Air& reference = product->reference().air;
  for (Bare& known : bare_) {
    const bool same_air = known.reference.temperature == reference.temperature && known.reference.humidity == reference.humidity;
    if (known.law == *law && known.side == side && same_air) return laws_[key] = &known;
  }
  const std::vector<double> none(air_.rows().size(), std::numeric_limits<double>::quiet_NaN());
  bare_.push_back({*law, reference, side, finish::Rate(*law, reference, side), none});
  return laws_[key] = &bare_.back();
}

double Clocks::rate(Bare& law, std::size_t row, Estimate estimate) const {
  const climate::Air& air = air_.rows()[row].air;
  double& rate = law.rates[row];
  if (std::isnan(rate)) rate = law.rate(air);
  if (estimate == Estimate::expected) return rate;
  const double unsure = finish::uncertainty(air);
  return rate * (estimate == Estimate::slow ? 1 / unsure : unsure);
}

std::optional<Instant> Clocks::run(const Key& key, Estimate estimate, Instant from, Hours need) const {
  Bare* law = bare(key);
  if (law == nullptr || from < air_.begin() || from >= air_.end()) return std::nullopt;
  constexpr double noise = 1e-6;  // seconds
  double left = need.count() * 3600;
  Instant at = from;
  for (std::size_t row = air_.index(from); row < air_.rows().size(); ++row) {
    if (left <= noise) return at;
    const Instant row_end = air_.rows()[row].from + climate::AirSeries::step;
    const double now = rate(*law, row, estimate);
    const double gain = now * static_cast<double>((row_end - at).count());
    if (gain >= left - noise) return at + std::chrono::seconds(static_cast<std::int64_t>(std::ceil(left / now - noise)));
    left -= gain;
    at = row_end;
  }
  return std::nullopt;
}

std::optional<Instant> Clocks::dried(const Product& product, Hours need, Instant applied, Estimate estimate) const {
  return run({&product, std::nullopt, Side::slow}, estimate, applied, need);
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
  if (!waits) return run({&product, stage, side}, estimate, applied, need);
  Hours to_recoat = drying * *hours[Stage::recoat];
  if (stage == Stage::recoat_close && to_recoat > need) to_recoat = need;  // the window ends before it opens
  const auto recoat = run({&product, Stage::recoat, side}, estimate, applied, to_recoat);
  if (!recoat) return std::nullopt;
  return run({&product, stage, side}, estimate, *recoat, need - to_recoat);
}

}  // namespace coatday::checker
