#include "report/papers/air_fit.h"

#include <fmt/core.h>

#include "report/files/json_parts.h"
#include "report/words.h"

namespace coatday::report {
namespace {

using climate::Fitted;
using climate::RoomFit;

/// Without the sign of a zero.
std::string rounded(double value, int decimals) {
  std::string text = fmt::format("{:.{}f}", value, decimals);
  return text.find_first_not_of("-0.") == std::string::npos && text.starts_with('-') ? text.substr(1) : text;
}

std::string kelvins(double difference, Units units) {
  return units == Units::us ? rounded(difference * 9 / 5, 2) + " °F" : rounded(difference, 2) + " K";
}

/// As finely as a good log tells it.
std::string time_text(double hours) { return rounded(hours, hours < 99.95 ? 1 : 0) + " h"; }
std::string gain_text(double kilograms) { return rounded(1000 * kilograms, 0) + " g/h"; }
std::string water_text(double ratio) { return rounded(1000 * ratio, 2) + " g/kg"; }

template <class Write>
std::string residual_text(const Fitted& fitted, const Write& write) {
  return fmt::format("off by {} (RMS), at most {}, {} on the mean, measured less modelled", write(fitted.rms), write(fitted.worst),
                     write(fitted.bias));
}

std::string used(const Fitted& fitted, const char* what) {
  return fmt::format("from {} readings over {} {}, in {}", fitted.readings, unbroken(format_span(fitted.hours)), what,
                     counted(fitted.spans, "span", "spans"));
}

Lines time_constant(const RoomFit& fit, const TextStyle& style) {
  const Text head(Text("  time constant  ", Mark::faint));
  if (!fit.time_constant) return hang(head, Text("not known: ", Mark::caution) + fit.time_constant.error(), style);
  const Fitted& fitted = *fit.time_constant;
  Lines lines = hang(head,
                     Text(time_text(fitted.value), Mark::strong) +
                         fmt::format(", in 19 of 20 cases {} to {}; ", time_text(fitted.low), time_text(fitted.high)) +
                         used(fitted, "with the heater off"),
                     style);
  append(lines, hang(spaces(17), residual_text(fitted, [&](double k) { return kelvins(k, style.units); }), style));
  if (fit.settles_at)
    append(lines, hang(spaces(17),
                       "No air outdoors is told, so that it was taken to be the same at all hours; the decay tends to " +
                           format_temperature(*fit.settles_at, style.units) + ".",
                       style));
  return lines;
}

Lines moisture_gain(const RoomFit& fit, const TextStyle& style) {
  const Text head(Text("  moisture gain  ", Mark::faint));
  if (!fit.moisture_gain) return hang(head, Text("not known: ", Mark::caution) + fit.moisture_gain.error(), style);
  const Fitted& fitted = *fit.moisture_gain;
  Lines lines =
      hang(head,
           Text(gain_text(fitted.value), Mark::strong) +
               fmt::format(", in 19 of 20 cases {} to {}; ", gain_text(fitted.low), gain_text(fitted.high)) + used(fitted, "of humidity"),
           style);
  append(lines, hang(spaces(17), residual_text(fitted, water_text), style));
  append(lines,
         hang(spaces(17),
              fmt::format("It rests on the volume and the air changes in the shop file, which the humidity alone cannot tell from the "
                          "gain: twice the changes with twice the gain settle alike. A sensor that reads 3 % RH too much adds {}.",
                          gain_text(fit.sensor)),
              style));
  if (fitted.low <= 0 && fitted.high >= 0) append(lines, hang(spaces(17), "It cannot be told from none.", style));
  if (fitted.high < 0)
    append(lines,
           hang(spaces(17),
                Text("Water goes that the model does not know of: look at the air changes, the sensor, a dehumidifier.", Mark::caution),
                style));
  return lines;
}

Lines keys(const RoomFit& fit, const TextStyle& style) {
  std::string text;
  if (fit.time_constant) text = "time constant: " + time_text(fit.time_constant->value);
  if (fit.moisture_gain && fit.moisture_gain->value > 0)
    text += (text.empty() ? "" : "   ") + ("moisture gain: " + gain_text(fit.moisture_gain->value));
  if (text.empty()) return {};
  return hang(Text("  for the shop file  ", Mark::faint), unbroken(text), style);
}

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

std::string fit_text(const job::Job& job, const climate::Log& log, const RoomFit& fit, const TextStyle& style) {
  Lines page = wrap(Text(job.shop.name, Mark::strong) + "  what " + log.name + " says of the room", style.columns);
  append(page, hang(Text("  log            ", Mark::faint), climate::span_words(log, job.shop.zone), style));
  for (const std::string& note : log.notes) append(page, hang(spaces(17), note, style));
  if (job.room->outdoors)
    append(page, hang(Text("  outdoors       ", Mark::faint),
                      job.room->outdoors->describe(style.units) +
                          "; where the weather of those days was another, the values are off by more than their ranges",
                      style));
  page.emplace_back();
  append(page, time_constant(fit, style));
  append(page, moisture_gain(fit, style));
  page.emplace_back();
  append(page, keys(fit, style));
  append(page, hang("  ", "Measured, modelled and outdoors of every reading, for a plot: --format csv", style));
  return render(page, style.colour);
}

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
