#include "checker/surface.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "climate/psychrometrics.h"
#include "wood/heat.h"

namespace coatday::checker {

namespace {

/// V/A of each shape, from volumes and surfaces of a metre of it, or of a square metre.
struct Depth {
  static double slab(Metres thickness) { return thickness.value() / 2; }
  static double square(Metres side) { return side.value() * side.value() / (4 * side.value()); }
  static double rod(Metres diameter) {
    const double r = diameter.value() / 2;
    return r * r / (2 * r);
  }

  double operator()(const piece::Board& b) const { return slab(b.thickness); }
  double operator()(const piece::RoundTop& top) const { return slab(top.thickness); }
  double operator()(const piece::TaperedLeg& leg) const { return std::max(square(leg.top), square(leg.foot)); }
  double operator()(const piece::TurnedLeg& leg) const {
    double most = 0;
    for (const piece::ProfilePoint& point : leg.profile) most = std::max(most, rod(point.diameter));
    return most;
  }
  double operator()(const piece::RoundTube& t) const { return t.wall ? t.wall->value() : rod(t.diameter); }
  double operator()(const piece::RectTube& t) const {
    const double w = t.width.value(), h = t.height.value();
    return t.wall ? t.wall->value() : w * h / (2 * w + 2 * h);
  }
  double operator()(const piece::Case& c) const { return slab(c.thickness); }
  double operator()(const piece::Door& d) const { return slab(d.thickness); }
  double operator()(const piece::Bowl& b) const { return slab(b.wall); }
  double operator()(const piece::Vessel& v) const { return slab(v.wall); }
  double operator()(const piece::FreeArea& f) const {
    return f.wall ? f.wall->value() : slab(std::min(f.length, std::min(f.width, f.height)));
  }
};

Hours to_the_minute(double seconds) { return Minutes(std::lround(seconds / 60)); }

constexpr double resistance = 0.13;  // m2K/W indoors, ISO 6946

}  // namespace

Hours own_time_constant(const piece::Part& part) {
  const double capacity = part.species ? wood::dense_hardwood * wood::specific_heat(Celsius(20), MoistureContent(0.12)) : 7850.0 * 490.0;
  return to_the_minute(std::visit(Depth(), part.shape) * capacity * resistance);
}

Hours own_time_constant(const finish::Product& product) {
  double litres = product.cans.empty() ? 1 : 1e9;
  for (const finish::Can& can : product.cans) litres = std::min(litres, can.size.value());
  // As high as wide: V = 2 pi r^3, A = 6 pi r^2.
  const double r = std::cbrt(litres / 1000 / (2 * std::numbers::pi));
  return to_the_minute(r / 3 * 4.18e6 * resistance);
}

ThermalBody::ThermalBody(const climate::AirSeries& air, Hours time_constant, Instant begin) {
  const bool lags = time_constant > Hours(0);
  if (lags) {  // Crank and Nicolson's step of a minute
    const double half = Minutes(1) / (2 * time_constant);
    keeps_ = (1 - half) / (1 + half);
    takes_ = 2 * half / (1 + half);
  }
  // In a row the room keeps its temperature, so what becomes of one degree behind it becomes of all.
  double left = 1, sum = 0;
  for (int minute = 0; minute < minutes_a_row; ++minute) {
    const double after = next(left, 0);
    sum += left + after;
    left = after;
  }
  const double mean = sum / (2 * minutes_a_row);
  double body = air.rows().empty() ? 0 : air.rows().front().air.temperature.value();
  begin_ = climate::AirSeries::row_start(begin);
  for (const climate::AirRow& row : air.rows()) {
    const double room = row.air.temperature.value();
    if (!lags) body = room;
    const double behind = body - room;
    if (row.from >= begin) {
      at_rows_.push_back(body);
      room_.push_back(room);
      means_.emplace_back(room + behind * mean);
    }
    body = room + behind * left;
  }
  at_rows_.push_back(body);
}

Kelvins ThermalBody::behind(Instant carried_in, Celsius from, Instant t) const {
  const auto minute = [this](Instant at) { return static_cast<std::size_t>((at - begin_) / Minutes(1)); };
  const std::size_t first = minute(carried_in), last = std::min(minute(t), room_.size() * minutes_a_row);
  double carried = from.value(), own = at_rows_[first / minutes_a_row];
  for (std::size_t m = first - first % minutes_a_row; m < last; ++m) {
    const double room = room_[m / minutes_a_row];
    own = next(own, room);
    if (m >= first) carried = next(carried, room);
  }
  return Kelvins(carried - own);
}

std::optional<std::size_t> first_off(const climate::AirSeries& said, const std::vector<Celsius>& own) {
  for (std::size_t r = 0; r < own.size(); ++r) {
    if (r >= said.rows().size()) return r;
    const Kelvins off = said.rows()[r].air.temperature - own[r];
    if (!(std::abs(off.value()) <= surface_slack.value())) return r;
  }
  return said.rows().size() > own.size() ? std::optional(own.size()) : std::nullopt;
}

climate::AirSeries at_temperatures(const climate::AirSeries& room, const std::vector<Pascals>& vapour,
                                   const std::vector<Celsius>& temperatures) {
  std::vector<climate::AirRow> rows(room.rows().begin(), room.rows().end());
  for (std::size_t r = 0; r < rows.size(); ++r) {
    climate::Air& air = rows[r].air;
    if (temperatures[r] == air.temperature) continue;
    air = {temperatures[r], RelativeHumidity(std::min(1.0, vapour[r] / climate::saturation_pressure(temperatures[r])))};
  }
  return climate::AirSeries(std::move(rows));
}

}  // namespace coatday::checker
