// Any bytes as a weather file and as a logger's readings: an error with its place must come out, or air that can be. The last byte says what
// is told about the logger.
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <memory>
#include <string_view>
#include <utility>

#include "climate/logged_air.h"
#include "climate/outdoor.h"
#include "climate/shop_air.h"

namespace {

using namespace coatday;
using namespace coatday::climate;

const Zone& summer_time() {
  static const Zone zone = Zone::find("America/Chicago").value();
  return zone;
}

LogForm form_of(std::uint8_t bits) {
  LogForm form;
  if ((bits & 1U) != 0) form.scale = (bits & 2U) != 0 ? Scale::celsius : Scale::fahrenheit;
  if ((bits & 4U) != 0) form.dates = (bits & 8U) != 0 ? DateOrder::day_first : DateOrder::month_first;
  if ((bits & 16U) != 0) form.clock = (bits & 32U) != 0 ? LogClock::standard : LogClock::utc;
  return form;
}

void demand(bool holds) {
  if (!holds) std::abort();
}

void demand_place(const ReadError& error, std::string_view text) {
  const auto lines = std::count(text.begin(), text.end(), '\n') + 1;
  demand(error.line >= 1 && error.line <= lines && error.column >= 1 && !error.message.empty());
}

void demand_air(const AirSource& source, Instant from, Instant until) {
  const AirSeries series(source, from, until);
  for (const AirRow& row : series.rows()) {
    demand(row.air.temperature >= Celsius(-90) && row.air.temperature <= Celsius(90));
    demand(row.air.humidity > RelativeHumidity(0) && row.air.humidity <= RelativeHumidity(1));
    demand(std::isfinite(row.dew_point.value()));
  }
}

void read_as_year(std::string_view text) {
  const auto year = OutdoorYear::parse(text, "town");
  if (!year) return demand_place(year.error(), text);
  const Instant late_in_february = date::sys_days(date::year(2028) / 2 / 27);
  demand_air(*year, late_in_february, late_in_february + date::days(4));
}

void read_as_log(std::string_view text, const LogForm& form) {
  auto log = read_log(text, "log.csv", form, summer_time());
  if (!log) return demand_place(log.error(), text);
  const auto late = [](const Reading& a, const Reading& b) { return a.time >= b.time; };
  demand(log->readings.size() >= 2);
  demand(std::adjacent_find(log->readings.begin(), log->readings.end(), late) == log->readings.end());
  demand(!span_text(*log, summer_time()).empty());
  const Instant first = log->readings.front().time;
  const LoggedAir air(std::make_shared<const Log>(*std::move(log)), std::make_unique<ConstantAir>(Air{Celsius(12), RelativeHumidity(0.6)}));
  demand_air(air, first - std::chrono::hours(50), first + std::chrono::hours(60));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  read_as_year(text);
  read_as_log(text, form_of(size == 0 ? 0 : data[size - 1]));
  return 0;
}
