#include "report/files/air_table.h"

#include <fmt/core.h>

#include "report/files/csv.h"
#include "report/files/json_parts.h"

namespace coatday::report {
namespace {

Json range_json(const job::Range& range) { return {range.low, range.high}; }
Json range_json(const std::optional<job::Range>& range) { return range ? range_json(*range) : Json(); }

Json days_json(const job::Job& job, const job::AirForecast& all) {
  Json days = Json::array();
  for (const job::AirDay& day : all.days) {
    days.push_back({{"day", iso8601(job.shop.zone.to_instant(LocalTime(day.day)), job.shop.zone).substr(0, 10)},
                    {"open_c", range_json(day.open)},
                    {"closed_c", range_json(day.closed)},
                    {"relative_humidity", range_json(day.humidity)},
                    {"dew_point_c", range_json(day.dew_point)},
                    {"saturated_h", day.saturated.count()},
                    {"condensed_l", day.condensed ? Json(day.condensed->value()) : Json()}});
  }
  return days;
}

Json bodies_json(const std::set<Hours>& bodies) {
  Json all = Json::array();
  for (const Hours body : bodies) all.push_back(body.count());
  return all;
}

/// With the time constants of all that a coat is judged at, beside the room.
Json finish_hours_json(const job::FinishHours& finish) {
  return {{"finish", finish.use.product},
          {"can_h", finish.can.count()},
          {"wood_h", bodies_json(finish.use.wood)},
          {"steel_h", bodies_json(finish.use.steel)}};
}

Json row_json(const job::Job& job, const job::AirForecast& all, std::size_t r) {
  const climate::AirRow& row = all.air.rows()[r];
  Json may = Json::array();
  for (const job::FinishHours& finish : all.finishes)
    if (finish.may[r]) may.push_back(finish.use.product);
  Json out{{"time", iso8601(row.from, job.shop.zone)},
           {"temperature_c", row.air.temperature.value()},
           {"relative_humidity", row.air.humidity.value()},
           {"dew_point_c", row.dew_point.value()},
           {"source", climate::word(row.origin)},
           {"working", static_cast<bool>(all.working[r])},
           {"may_go_on", may}};
  if (const auto work = all.air.work(r)) {
    out["heater_h"] = job.room && job.room->room.heater ? Json(work->heating.count()) : Json();
    out["removed_kg"] = work->removed.value();
    out["condensed_kg"] = work->condensed.value();
  }
  return out;
}

}  // namespace

std::string air_json(const job::Job& job, const job::AirForecast& all, std::string_view version) {
  Json out{{"schema", "coatday-air/1"},
           {"program", {{"name", "coatday"}, {"version", version}}},
           {"shop", job.shop.name},
           {"timezone", job.shop.zone.name()},
           {"air", job.shop.air_description}};
  Json& finishes = out["finishes"] = Json::array();
  for (const job::FinishHours& finish : all.finishes) finishes.push_back(finish_hours_json(finish));
  Json& notes = out["notes"] = Json::array();
  for (const job::AirNote& note : job.air_notes) notes.push_back({{"file", note.file}, {"message", note.message}});
  out["days"] = days_json(job, all);
  Json& rows = out["rows"] = Json::array();
  for (std::size_t r = all.days.front().first; r < all.days.back().last; ++r) rows.push_back(row_json(job, all, r));
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string air_csv(const job::Job& job, const job::AirForecast& all) {
  std::string text = "time,t_c,rh_pct,dew_point_c,source,working";
  for (const job::FinishHours& finish : all.finishes) text += "," + csv_text(finish.use.product);
  text += "\n";
  for (std::size_t r = all.days.front().first; r < all.days.back().last; ++r) {
    const climate::AirRow& row = all.air.rows()[r];
    text += fmt::format("{},{:.2f},{:.1f},{:.2f},{},{}", iso8601(row.from, job.shop.zone), row.air.temperature.value(),
                        100 * row.air.humidity.value(), row.dew_point.value(), csv_text(climate::word(row.origin)), all.working[r] ? 1 : 0);
    for (const job::FinishHours& finish : all.finishes) text += finish.may[r] ? ",1" : ",0";
    text += "\n";
  }
  return text;
}

}  // namespace coatday::report
