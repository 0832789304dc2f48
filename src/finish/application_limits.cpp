#include "finish/application_limits.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "finish/law.h"

namespace coatday::finish {
namespace {

using climate::AirRow;
using climate::AirSeries;

struct Pair {
  std::string value, limit;
};

/// Both with as few decimals as show the limit exactly and the two as different.
Pair told_apart(double value, double limit) {
  int decimals = std::abs(limit - std::round(limit)) < 0.05 ? 0 : 1;
  Pair text;
  do {
    text = {fmt::format("{:.{}f}", value, decimals), fmt::format("{:.{}f}", limit, decimals)};
  } while (text.value == text.limit && ++decimals <= 3);
  if (text.value == "-0") text.value = "0";
  return text;
}

double degrees(Celsius t, Units units) { return units == Units::us ? t.value() * 1.8 + 32 : t.value(); }

/// Where a limit is checked: in the room's air, at a surface, in a can.
struct Met {
  std::string_view name;  // none: the room's air
  const AirSeries& air;
  Limits limits;
};

/// The humidity limit is about the air that takes up the water, so it is checked only once, in the room, and not at surfaces.
Limits at_surface(Limits limits) {
  limits.dampest = RelativeHumidity(1);
  return limits;
}

Limits of_can(const Limits& limits) {
  Limits cold = at_surface(limits);
  constexpr double no_limit = 1e9;
  cold.hottest = Celsius(no_limit);
  cold.dew_point_margin = Kelvins(-no_limit);
  cold.hold = Hours(0);
  cold.blush_margin = std::nullopt;
  return cold;
}

std::vector<Met> all_met(const Limits& limits, const Conditions& conditions) {
  std::vector<Met> all{{"", *conditions.room, limits}};
  for (const Conditions::Surface& surface : conditions.surfaces) all.push_back({surface.name, *surface.air, at_surface(limits)});
  if (conditions.can != nullptr) all.push_back({"the can", *conditions.can, of_can(limits)});
  return all;
}

std::string temperature_text(const Met& met, Celsius value, std::string_view when, std::string_view relation, Celsius limit, Units units) {
  const char* unit = units == Units::us ? "°F" : "°C";
  const Pair text = told_apart(degrees(value, units), degrees(limit, units));
  const std::string is = met.name.empty() ? fmt::format("{} {}{} is", text.value, unit, when)
                                          : fmt::format("{} is at {} {}{},", met.name, text.value, unit, when);
  return fmt::format("{} {} its limit of {} {}", is, relation, text.limit, unit);
}

std::string margin_text(const Met& met, Kelvins margin, Kelvins limit, std::string_view effect, Units units) {
  const double scale = units == Units::us ? 1.8 : 1;
  const char* unit = units == Units::us ? "°F" : "K";
  const Pair text = told_apart(margin.value() * scale, limit.value() * scale);
  const std::string above = met.name.empty() ? fmt::format("the air is {} {} above its dew point", text.value, unit)
                                             : fmt::format("{} is {} {} above the dew point of the air", met.name, text.value, unit);
  return fmt::format("{}, {} {} {}", above, effect, text.limit, unit);
}

Kelvins margin(const AirRow& row) { return row.air.temperature - row.dew_point; }

bool suits(const Limits& limits, const AirRow& row) {
  return row.air.temperature >= limits.coldest && row.air.temperature <= limits.hottest && row.air.humidity <= limits.dampest &&
         margin(row) >= limits.dew_point_margin && !(limits.blush_margin && margin(row) < *limits.blush_margin);
}

/// Why a row does not suit.
std::string reason(const Met& met, const AirRow& row, Units units) {
  const Limits& limits = met.limits;
  const climate::Air& air = row.air;
  if (air.temperature < limits.coldest) return temperature_text(met, air.temperature, "", "below", limits.coldest, units);
  if (air.temperature > limits.hottest) return temperature_text(met, air.temperature, "", "above", limits.hottest, units);
  if (air.humidity > limits.dampest) {
    const Pair text = told_apart(100 * air.humidity.value(), 100 * limits.dampest.value());
    return fmt::format("{} % RH is above its limit of {} % RH", text.value, text.limit);
  }
  if (margin(row) < limits.dew_point_margin) return margin_text(met, margin(row), limits.dew_point_margin, "it needs", units);
  return margin_text(met, margin(row), *limits.blush_margin, "the coat blushes under", units);
}

/// The rows that a span touches; the one that holds `from` at least. None where the series does not hold them all.
std::optional<std::span<const AirRow>> touched(const AirSeries& air, Instant from, Instant until) {
  if (from < air.begin() || from >= air.end() || until > air.end()) return std::nullopt;
  const std::size_t first = air.index(from);
  const std::size_t last = until > from ? air.index(until - std::chrono::seconds(1)) : first;
  return air.rows().subspan(first, last - first + 1);
}

constexpr const char* unknown_air = "the air is not known for so long";

/// The first wet film dries while the last one still goes on, so the hold covers the application too. The message names the coldest row:
/// the first row that is too cold is close to the limit, and would make a cold night look like a near miss.
std::optional<std::string> too_cold_to_hold(const Met& met, Instant start, Instant end, Units units) {
  const Limits& limits = met.limits;
  if (limits.hold <= Hours(0)) return std::nullopt;
  const auto rows = touched(met.air, start, later(end, limits.hold));
  if (!rows) return unknown_air;
  const auto cold =
      std::min_element(rows->begin(), rows->end(), [](const AirRow& a, const AirRow& b) { return a.air.temperature < b.air.temperature; });
  if (!(cold->air.temperature < limits.hold_above)) return std::nullopt;
  const std::string when = fmt::format(" within {} of the coat", format_span(limits.hold));
  return temperature_text(met, cold->air.temperature, when, "below", limits.hold_above, units);
}

void allow(const Met& met, std::vector<bool>& allowed) {
  const Limits& limits = met.limits;
  const auto rows = met.air.rows();
  const std::chrono::seconds hold = later(met.air.begin(), std::max(limits.hold, Hours(0))) - met.air.begin();
  const auto held =
      static_cast<std::size_t>((hold + AirSeries::step - std::chrono::seconds(1)) / AirSeries::step);  // rows that the hold touches
  std::size_t cold = rows.size();  // the first row from this one on that is too cold to hold; the unknown air after the last is
  for (std::size_t r = rows.size(); r-- > 0;) {
    if (held > 0 && rows[r].air.temperature < limits.hold_above) cold = r;
    allowed[r] = allowed[r] && suits(limits, rows[r]) && r + held < cold;
  }
}

}  // namespace

std::optional<std::string> limit_exceeded(const Product& product, const Conditions& conditions, Instant start, Instant end, Units units) {
  const std::vector<Met> all = all_met(product.limits, conditions);
  for (const Met& met : all) {
    const auto rows = touched(met.air, start, end);
    if (!rows) return unknown_air;
    for (const AirRow& row : *rows) {
      if (!suits(met.limits, row)) return reason(met, row, units);
    }
  }
  for (const Met& met : all) {
    if (auto words = too_cold_to_hold(met, start, end, units)) return words;
  }
  return std::nullopt;
}

std::optional<std::string> blush_warning(const Product& product, const Conditions& conditions, Instant start, Instant end, Units units) {
  const auto& limit = product.limits.blush_warning;
  if (!limit) return std::nullopt;
  Conditions without_can = conditions;
  without_can.can = nullptr;
  for (const Met& met : all_met(product.limits, without_can)) {
    const auto rows = touched(met.air, start, end);
    if (!rows) return std::nullopt;
    const auto near = std::find_if(rows->begin(), rows->end(), [&](const AirRow& r) { return margin(r) < *limit; });
    if (near != rows->end()) return margin_text(met, margin(*near), *limit, "the coat may blush under", units);
  }
  return std::nullopt;
}

std::vector<bool> allowed_rows(const Product& product, const Conditions& conditions) {
  std::vector<bool> allowed(conditions.room->rows().size(), true);
  for (const Met& met : all_met(product.limits, conditions)) allow(met, allowed);
  return allowed;
}

}  // namespace coatday::finish
