#include "plan/air_days.h"

#include <algorithm>

#include "finish/clock.h"

namespace coatday::plan {
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
    if (row.air.humidity >= RelativeHumidity(1)) result.saturated += AirSeries::step;
    if (row.work && job.room && job.room->room.moisture)
      result.condensed = result.condensed.value_or(Litres(0)) + Litres(row.work->condensed.value());
  }
  result.humidity = humidity.value_or(Range{});
  result.dew_point = dew_point.value_or(Range{});
  return result;
}

FinishHours finish_hours(const finish::Product& product, const AirForecast& all, Units units) {
  FinishHours hours{product.id, finish::allowed_rows(product, all.air), "", {}};
  for (std::size_t r = 0; r < all.days.back().last; ++r) {
    if (hours.may[r] || !all.working[r]) continue;
    const Instant from = all.air.rows()[r].from;
    if (const auto words = finish::refused(product, all.air, from, from + AirSeries::step, units)) {
      hours.hindrance = *words;
      hours.hindered = from;
      break;
    }
  }
  return hours;
}

void add_once(std::vector<std::string>& all, const std::string& one) {
  if (std::find(all.begin(), all.end(), one) == all.end()) all.push_back(one);
}

}  // namespace

AirForecast forecast(const Job& job, const finish::Catalogue& catalogue, const std::vector<std::string>& products, Instant from, int days) {
  const Zone& zone = job.shop.zone;
  const LocalDay first = day_of(zone.to_local(from));
  const Instant begin = zone.to_instant(first), end = zone.to_instant(first + date::days(days));
  Hours held{0};
  for (const std::string& id : products) held = std::max(held, catalogue.product(id)->limits.hold);
  const Instant until = later(end, held) + 2 * AirSeries::step;
  AirForecast all;
  all.air = AirSeries(*job.air(begin, until + AirSeries::step), begin, until);
  all.working = working_rows(all.air, shop::working_time(job.shop, begin, end));
  std::size_t row = 0;
  while (row < all.air.rows().size() && all.air.rows()[row].from < begin) ++row;  // of a zone that is not whole half hours from UTC
  for (LocalDay day = first; day < first + date::days(days); day += date::days(1)) {
    all.days.push_back(air_day(job, all, day, row));
    row = all.days.back().last;
  }
  for (const std::string& id : products) all.finishes.push_back(finish_hours(*catalogue.product(id), all, job.shop.units));
  return all;
}

std::vector<std::string> products_in_use(const Job& job) {
  std::vector<std::string> all;
  for (const OrderPiece& one : job.order.pieces) {
    for (const piece::Part& part : one.piece.parts) {
      const finish::Schedule* schedule = job.catalogue.schedule(part.schedule);
      if (schedule == nullptr) continue;
      for (const finish::Step& step : schedule->steps)
        if (step.product) add_once(all, *step.product);
    }
  }
  if (!job.order.pieces.empty()) return all;
  for (const shop::StockItem& item : job.shop.stock) add_once(all, item.product);
  return all;
}

}  // namespace coatday::plan
