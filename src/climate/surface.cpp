#include "climate/surface.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "climate/psychrometrics.h"

namespace coatday::climate {
namespace {

constexpr double surface_resistance = 0.13;  // m2K/W

/// What is left of a difference after so long.
double left(Hours elapsed, Hours time_constant) { return time_constant > Hours(0) ? std::exp(-elapsed / time_constant) : 0; }

/// The row's air at the surface.
AirRow at_surface(const AirRow& row, Pascals vapour, Celsius surface) {
  if (surface == row.air.temperature) return row;
  AirRow result = row;
  const double humidity = vapour / saturation_pressure(surface);
  result.air = {surface, RelativeHumidity(std::min(humidity, 1.0))};
  return result;
}

}  // namespace

Hours lumped_time_constant(double capacity, Metres depth) { return Hours(capacity * depth.value() * surface_resistance / 3600); }

Hours settling(Hours time_constant) {
  constexpr Hours night{24};
  return std::chrono::ceil<std::chrono::hours>(std::max(night, 10 * time_constant));
}

Hours whole_minutes(Hours exact) { return std::chrono::round<Minutes>(exact); }

Surface::Surface(const AirSeries& air, Hours time_constant, Instant from) : Surface(air, vapour_pressures(air), time_constant, from) {}

Surface::Surface(const AirSeries& air, const std::vector<Pascals>& vapour, Hours time_constant, Instant from)
    : time_constant_(time_constant) {
  const Instant begin = AirSeries::row_start(from);
  const double over_row = left(AirSeries::step, time_constant);
  // Mean over a row of a difference that is 1 at its start.
  const double mean = time_constant / Hours(AirSeries::step) * (1 - over_row);
  room_ = air.since(from);
  std::vector<AirRow> rows;
  rows.reserve(room_.rows().size());
  at_rows_.reserve(room_.rows().size() + 1);
  Celsius surface = air.rows().empty() ? Celsius() : air.rows().front().air.temperature;
  for (std::size_t r = 0; r < air.rows().size(); ++r) {
    const AirRow& row = air.rows()[r];
    const Celsius room = row.air.temperature;
    if (time_constant <= Hours(0)) surface = room;
    const Kelvins behind = surface - room;
    if (row.from >= begin) {
      rows.push_back(time_constant > Hours(0) ? at_surface(row, vapour[r], room + behind * mean) : row);
      at_rows_.push_back(surface);
    }
    surface = room + behind * over_row;
  }
  at_rows_.push_back(surface);
  air_ = AirSeries(std::move(rows));
}

Celsius Surface::at(Instant t) const {
  const std::size_t row = air_.index(t);
  const Celsius room = room_.rows()[row].air.temperature;
  return room + (at_rows_[row] - room) * left(t - air_.rows()[row].from, time_constant_);
}

Instant Surface::warm(Instant t, Celsius from) const {
  const double behind = std::abs((from - at(t)) / near_enough);
  return behind > 1 ? later(t, time_constant_ * std::log(behind)) : t;
}

}  // namespace coatday::climate
