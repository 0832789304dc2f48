#include "report/files/air_fit_table.h"

#include <fmt/core.h>

#include "report/files/json_parts.h"

namespace coatday::report {
namespace {

using climate::Fitted;
using climate::RoomFit;

Json fitted_json(const tl::expected<Fitted, std::string>& fit) {
  if (!fit) return {{"value", nullptr}, {"why_not", fit.error()}};
  return {{"value", fit->value}, {"low", fit->low},   {"high", fit->high},           {"rms", fit->rms},
          {"worst", fit->worst}, {"bias", fit->bias}, {"hours", fit->hours.count()}, {"readings", fit->readings},
          {"spans", fit->spans}};
}

template <class T>
Json or_null(const std::optional<T>& value) {
  return value ? Json(value->value()) : Json();
}

template <class T>
std::string field(const std::optional<T>& value, double factor, int digits) {
  return value ? fmt::format("{:.{}f}", factor * value->value(), digits) : "";
}

}  // namespace

std::string fit_json(const job::Job& job, const climate::Log& log, const RoomFit& fit, std::string_view version) {
  Json out{{"schema", "coatday-fit/1"},
           {"program", {{"name", "coatday"}, {"version", version}}},
           {"shop", job.shop.name},
           {"log", log.name},
           {"notes", log.notes},
           {"time_constant_h", fitted_json(fit.time_constant)},
           {"moisture_gain_kg_h", fitted_json(fit.moisture_gain)},
           {"sensor_3_percent_kg_h", fit.moisture_gain ? Json(fit.sensor) : Json()},
           {"settles_at_c", or_null(fit.settles_at)}};
  Json& rows = out["rows"] = Json::array();
  for (const climate::FitRow& row : fit.rows) {
    rows.push_back({{"time", iso8601(row.measured.time, job.shop.zone)},
                    {"measured_c", row.measured.temperature.value()},
                    {"modelled_c", or_null(row.modelled)},
                    {"outdoors_c", or_null(row.outdoors)},
                    {"measured_rh", or_null(row.measured.humidity)},
                    {"modelled_rh", or_null(row.modelled_humidity)}});
  }
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string fit_csv(const job::Job& job, const RoomFit& fit) {
  std::string text = "time,measured_c,modelled_c,outdoors_c,measured_rh_pct,modelled_rh_pct\n";
  for (const climate::FitRow& row : fit.rows) {
    text += fmt::format("{},{:.2f},{},{},{},{}\n", iso8601(row.measured.time, job.shop.zone), row.measured.temperature.value(),
                        field(row.modelled, 1, 2), field(row.outdoors, 1, 2), field(row.measured.humidity, 100, 1),
                        field(row.modelled_humidity, 100, 1));
  }
  return text;
}

}  // namespace coatday::report
