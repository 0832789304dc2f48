#include "job/air_forecast.h"

#include <algorithm>
#include <map>

#include "climate/psychrometrics.h"
#include "climate/surface.h"
#include "finish/application_limits.h"
#include "piece/heat.h"

namespace coatday::job {
namespace {

using climate::AirRow;
using climate::AirSeries;

void widen(std::optional<Range>& range, double value) {
  if (!range) range = Range{value, value};
  range->low = std::min(range->low, value);
  range->high = std::max(range->high, value);
}

std::vector<bool> working_rows(const AirSeries& air, const std::vector<shop::WorkingTime>& working) {
  std::vector<bool> rows;
  for (const AirRow& row : air.rows()) {
    rows.push_back(std::any_of(working.begin(), working.end(), [&](const auto& w) { return w.begin <= row.from && row.from < w.end; }));
  }
  return rows;
}

AirDay air_day(const Job& job, const AirForecast& all, LocalDay day, std::size_t first) {
  const auto rows = all.air.rows();
  AirDay result;
  result.day = day;
  result.first = result.last = first;
  while (result.last < rows.size() && day_of(job.shop.zone.to_local(rows[result.last].from)) == day) ++result.last;
  std::size_t opens = result.last, closes = result.last;
  for (std::size_t r = first; r < result.last; ++r) {
    if (!all.working[r]) continue;
    opens = std::min(opens, r);
    closes = r + 1;
  }
  std::optional<Range> humidity, dew_point;
  for (std::size_t r = first; r < result.last; ++r) {
    const AirRow& row = rows[r];
    widen(r >= opens && r < closes ? result.open : result.closed, row.air.temperature.value());
    widen(humidity, row.air.humidity.value());
    widen(dew_point, row.dew_point.value());
    const auto work = all.air.work(r);
    // A row that condenses while it warms is just under 100 % on its mean.
    result.saturated += row.air.humidity >= RelativeHumidity(1) ? Hours(AirSeries::step) : work ? work->condensing : Hours(0);
    if (work && job.room && job.room->room.moisture)
      result.condensed = result.condensed.value_or(Litres(0)) + Litres(work->condensed.value());
  }
  result.humidity = humidity.value_or(Range{});
  result.dew_point = dew_point.value_or(Range{});
  return result;
}

using Surfaces = std::map<Hours, climate::Surface>;

finish::Conditions conditions(const FinishHours& hours, const AirForecast& all, const Surfaces& surfaces) {
  finish::Conditions met(all.air);
  for (const Hours body : hours.use.wood) met.surfaces.push_back({"the wood", &surfaces.at(body).air()});
  for (const Hours body : hours.use.steel) met.surfaces.push_back({"the steel", &surfaces.at(body).air()});
  met.can = &surfaces.at(hours.can).air();
  return met;
}

void find_hours(FinishHours& hours, const finish::Product& product, const AirForecast& all, const Surfaces& surfaces, Units units) {
  const finish::Conditions met = conditions(hours, all, surfaces);
  hours.may = finish::allowed_rows(product, met);
  for (std::size_t r = 0; r < all.days.back().last; ++r) {
    if (hours.may[r] || !all.working[r]) continue;
    const Instant from = all.air.rows()[r].from;
    if (const auto words = finish::limit_exceeded(product, met, from, from + AirSeries::step, units)) {
      hours.limit_exceeded = *words;
      hours.hindered = from;
      break;
    }
  }
}

/// All that lags, begun early enough to know it at `begin`.
Surfaces lagging(const Job& job, const std::vector<FinishHours>& finishes, Instant begin, Instant until) {
  Surfaces surfaces;
  for (const FinishHours& hours : finishes) {
    surfaces[hours.can];
    for (const Hours body : hours.use.wood) surfaces[body];
    for (const Hours body : hours.use.steel) surfaces[body];
  }
  if (surfaces.empty()) return surfaces;
  const Instant before = later(begin, -climate::settling(surfaces.rbegin()->first));
  const AirSeries air(*job.air(before, until + AirSeries::step), before, until);
  const std::vector<Pascals> vapour = climate::vapour_pressures(air);
  for (auto& [time_constant, surface] : surfaces) surface = climate::Surface(air, vapour, time_constant, begin);
  return surfaces;
}

Use& use_of(std::vector<Use>& all, const std::string& product) {
  const auto known = std::find_if(all.begin(), all.end(), [&](const Use& use) { return use.product == product; });
  return known != all.end() ? *known : all.emplace_back(Use{product, {}, {}});
}

}  // namespace

AirForecast forecast(const Job& job, const finish::Catalogue& catalogue, const std::vector<Use>& uses, Instant from, int days) {
  const Zone& zone = job.shop.zone;
  const LocalDay first = day_of(zone.to_local(from));
  const Instant begin = zone.to_instant(first), end = zone.to_instant(first + date::days(days));
  Hours held{0};
  AirForecast all;
  for (const Use& use : uses) {
    const finish::Product& product = *catalogue.product(use.product);
    held = std::max(held, product.limits.hold);
    all.finishes.push_back({use, finish::can_time_constant(product), {}, "", {}});
  }
  const Instant until = later(end, held) + 2 * AirSeries::step;
  all.air = AirSeries(*job.air(begin, until + AirSeries::step), begin, until);
  all.working = working_rows(all.air, shop::working_time(job.shop, begin, end));
  std::size_t row = 0;
  while (row < all.air.rows().size() && all.air.rows()[row].from < begin) ++row;  // of a zone that is not whole half hours from UTC
  for (LocalDay day = first; day < first + date::days(days); day += date::days(1)) {
    all.days.push_back(air_day(job, all, day, row));
    row = all.days.back().last;
  }
  const Surfaces surfaces = lagging(job, all.finishes, begin, until);
  for (FinishHours& hours : all.finishes) find_hours(hours, *catalogue.product(hours.use.product), all, surfaces, job.shop.units);
  return all;
}

std::vector<Use> in_use(const Job& job) {
  std::vector<Use> all;
  for (const OrderPiece& one : job.order.pieces) {
    for (const piece::Part& part : one.piece.parts) {
      const finish::Schedule* schedule = job.catalogue.schedule(part.schedule);
      if (schedule == nullptr) continue;
      for (const finish::Step& step : schedule->steps) {
        if (!step.product) continue;
        Use& use = use_of(all, *step.product);
        if (const Hours body = piece::time_constant(part); body > Hours(0)) (part.wood() ? use.wood : use.steel).insert(body);
      }
    }
  }
  if (!job.order.pieces.empty()) return all;
  for (const shop::StockItem& item : job.shop.stock) use_of(all, item.product);
  return all;
}

}  // namespace coatday::job
