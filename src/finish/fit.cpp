#include "finish/fit.h"

#include <algorithm>
#include <cmath>

namespace coatday::finish {
namespace {

/// A stage's time on one row, and on the first row that has the stage.
struct Observation {
  climate::Air anchor, air;
  double log_ratio;  // ln(time / time in the anchor's air)
};

/// The hours that this clock counts to the stage: a cure that waits for recoat counts from there. None in saturated air where the law
/// needs dry air, for there the label contradicts the law.
std::optional<double> counted_hours(const StageRow& row, Stage stage, const Law& law) {
  if (!row.hours[stage] || !(rate(law, row.air, reference_air, Side::fast) > 0)) return std::nullopt;
  const std::optional<Hours> recoat = law.cure_starts_at_recoat ? row.hours[Stage::recoat] : std::nullopt;
  const double hours = (*row.hours[stage] - recoat.value_or(Hours(0))).count();
  return hours > 0 ? std::optional(hours) : std::nullopt;
}

std::vector<Observation> observations(const Product& product, const std::vector<Stage>& stages, const Law& law) {
  std::vector<Observation> found;
  for (const Stage stage : stages) {
    const StageRow* anchor = nullptr;
    for (const StageRow& row : product.rows) {
      const std::optional<double> hours = counted_hours(row, stage, law);
      if (!hours) continue;
      if (anchor == nullptr) anchor = &row;
      if (&row != anchor) found.push_back({anchor->air, row.air, std::log(*hours / *counted_hours(*anchor, stage, law))});
    }
  }
  return found;
}

/// ln(label time / fitted time).
double misfit(const Law& law, const Observation& o) { return o.log_ratio + std::log(rate(law, o.air, o.anchor, Side::fast)); }

double worst_misfit(const Law& law, const std::vector<Observation>& seen) {
  double worst = 0;
  for (const Observation& o : seen) worst = std::max(worst, std::abs(misfit(law, o)));
  return worst;
}

double squares(const Law& law, const std::vector<Observation>& seen) {
  double sum = 0;
  for (const Observation& o : seen) sum += misfit(law, o) * misfit(law, o);
  return sum;
}

/// ln(time) is linear in the activation energy, so least squares has a closed form. Not below 0: no finish dries slower in warmer air.
KilojoulesPerMole fit_activation(Law law, const std::vector<Observation>& seen) {
  law.activation = KilojoulesPerMole(1);
  double xx = 0, xy = 0;
  for (const Observation& o : seen) {
    const double x = -std::log(rate(law, o.air, o.anchor, Side::fast));  // ln(time) per kJ/mol
    xx += x * x;
    xy += x * o.log_ratio;
  }
  return KilojoulesPerMole(xx > 0 ? std::max(0.0, xy / xx) : 0);
}

/// Golden-section search in the interval around the best of a coarse grid over 0 to 1.
double fit_wet_bulb_share(Law law, const std::vector<Observation>& seen) {
  const auto cost = [&](double share) {
    law.wet_bulb_share = share;
    return squares(law, seen);
  };
  constexpr int grid = 20;
  int best = 0;
  for (int i = 1; i <= grid; ++i) {
    if (cost(1.0 * i / grid) < cost(1.0 * best / grid)) best = i;
  }
  double low = std::max(0.0, (best - 1.0) / grid);
  double high = std::min(1.0, (best + 1.0) / grid);
  constexpr double golden = 0.6180339887498949;
  while (high - low > 1e-7) {
    const double left = high - golden * (high - low);
    const double right = low + golden * (high - low);
    (cost(left) < cost(right) ? high : low) = cost(left) < cost(right) ? right : left;
  }
  constexpr double finer_than_known = 1e-6;  // so that an end of the range is met
  return std::round((low + high) / 2 / finer_than_known) * finer_than_known;
}

bool temperatures_differ(const Observation& o) { return o.air.temperature != o.anchor.temperature; }
bool airs_differ(const Observation& o) { return temperatures_differ(o) || o.air.humidity != o.anchor.humidity; }

/// The label holds in the air of its own rows, so the range includes them.
void widen(Law& law, const climate::Air& air) {
  law.no_credit_below = std::min(law.no_credit_below, air.temperature);
  law.coldest = std::min(law.coldest, air.temperature);
  law.hottest = std::max(law.hottest, air.temperature);
  law.driest = std::min(law.driest, air.humidity);
  law.dampest = std::max(law.dampest, air.humidity);
}

std::vector<Stage> stages_of(Clock clock) {
  std::vector<Stage> stages;
  for (std::size_t s = 0; s < stage_count; ++s) {
    if (clock_of(static_cast<Stage>(s)) == clock) stages.push_back(static_cast<Stage>(s));
  }
  return stages;
}

std::optional<Fit> fit(const Product& product, Clock clock, const std::vector<Stage>& stages) {
  const std::optional<Law> start = product.law(clock);
  if (!start) return std::nullopt;
  Law law = *start;
  const std::vector<Observation> seen = observations(product, stages, law);

  switch (law.kind) {
    case Law::Kind::arrhenius:
      if (std::none_of(seen.begin(), seen.end(), temperatures_differ)) return std::nullopt;
      law.activation = fit_activation(law, seen);
      break;
    case Law::Kind::vapour_deficit:
      if (std::none_of(seen.begin(), seen.end(), airs_differ)) return std::nullopt;
      law.wet_bulb_share = fit_wet_bulb_share(law, seen);
      break;
    case Law::Kind::vapour_pressure:
      if (std::none_of(seen.begin(), seen.end(), airs_differ)) return std::nullopt;
      break;  // nothing to fit; the residual shows how far the label is from it
  }
  Fit found{law, worst_misfit(law, seen)};
  for (const Observation& o : seen) {
    widen(found.law, o.anchor);
    widen(found.law, o.air);
  }
  if (law.kind != Law::Kind::vapour_pressure) found.law.source = "fitted to the rows of the record";
  found.law.least = found.law.most = 0;  // the residual shows how far the label is from it
  return found;
}

/// Airs over the range that the rows span: each degree or so, and their humidities.
std::vector<climate::Air> airs_between(const std::vector<StageRow>& rows) {
  const auto [coldest, hottest] = std::minmax_element(
      rows.begin(), rows.end(), [](const StageRow& a, const StageRow& b) { return a.air.temperature < b.air.temperature; });
  constexpr int parts = 20;
  std::vector<climate::Air> airs;
  for (int i = 0; i <= parts; ++i) {
    const Kelvins above = (1.0 * i / parts) * (hottest->air.temperature - coldest->air.temperature);
    for (const StageRow& row : rows) airs.push_back({coldest->air.temperature + above, row.air.humidity});
  }
  return airs;
}

bool in_order(const Product& product, const PerStage<std::optional<Fit>>& fits, Clock clock) {
  const StageRow& first = product.reference();
  const auto hours = [&](Stage stage, const Law& shared, const climate::Air& air) {
    const Law& law = fits[stage] ? fits[stage]->law : shared;
    return counted_hours(first, stage, law).value_or(0) / rate(law, air, first.air, Side::fast);
  };
  const std::optional<Fit> together = fit(product, clock, stages_of(clock));
  if (!together) return true;
  const std::vector<climate::Air> airs = airs_between(product.rows);
  for (const StageOrder& order : stage_orders) {
    if (clock_of(order.first) != clock || clock_of(order.then) != clock || !first.hours[order.first] || !first.hours[order.then]) continue;
    for (const climate::Air& air : airs) {
      constexpr double rounding = 1e-9;
      if (hours(order.first, together->law, air) > hours(order.then, together->law, air) * (1 + rounding)) return false;
    }
  }
  return true;
}

}  // namespace

std::optional<Fit> fit_law(const Product& product, Clock clock) { return fit(product, clock, stages_of(clock)); }

std::optional<Fit> as_recorded(const Product& product, Stage stage) {
  const std::optional<Law>& law = clock_of(stage) == Clock::drying ? product.drying_law : product.cure_law;
  if (!law) return std::nullopt;
  const std::vector<Observation> seen = observations(product, {stage}, *law);
  if (std::none_of(seen.begin(), seen.end(), airs_differ)) return std::nullopt;
  return Fit{*law, worst_misfit(*law, seen)};
}

PerStage<std::optional<Fit>> fit_stages(const Product& product) {
  PerStage<std::optional<Fit>> fits;
  for (const Clock clock : {Clock::drying, Clock::cure}) {
    for (const Stage stage : stages_of(clock)) fits[stage] = fit(product, clock, {stage});
    if (in_order(product, fits, clock)) continue;
    for (const Stage stage : stages_of(clock)) fits[stage].reset();
  }
  return fits;
}

}  // namespace coatday::finish
