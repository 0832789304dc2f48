#include "plan/check/surface.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "climate/psychrometrics.h"
#include "wood/heat.h"

namespace coatday::plan::checking {

namespace {

constexpr double minutes_a_row = 30;

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
  double operator()(const piece::FreeArea& f) const {
    return f.wall ? f.wall->value() : slab(std::min(f.length, std::min(f.width, f.height)));
  }
};

/// The next of 1/4, 3/8, 1/2, 3/4, 1, 3/2, 2 h ...; nothing up to 5 min.
Hours class_of(double seconds) {
  if (seconds <= 5 * 60) return Hours(0);
  double hours = 0.25;
  for (int n = 1; hours * 3600 < seconds; ++n) hours = (n % 2 == 0 ? 0.25 : 0.375) * std::exp2(n / 2);
  return Hours(hours);
}

/// The row's air, brought to this temperature with all its water.
climate::AirRow brought_to(climate::AirRow row, Celsius t) {
  const double e = climate::vapour_pressure(row.air).value();
  row.air = {t, RelativeHumidity(std::min(1.0, e / climate::saturation_pressure(t).value()))};
  return row;
}

constexpr double resistance = 0.13;  // m2K/W indoors, ISO 6946

}  // namespace

Hours own_time_constant(const piece::Part& part) {
  const double capacity = part.species ? wood::dense_hardwood * wood::specific_heat(Celsius(20), MoistureContent(0.12)) : 7850.0 * 490.0;
  return class_of(std::visit(Depth(), part.shape) * capacity * resistance);
}

Hours own_time_constant(const finish::Product& product) {
  double litres = product.cans.empty() ? 1 : 1e9;
  for (const finish::Can& can : product.cans) litres = std::min(litres, can.size.value());
  // As high as wide: V = 2 pi r^3, A = 6 pi r^2.
  const double r = std::cbrt(litres / 1000 / (2 * std::numbers::pi));
  return class_of(r / 3 * 4.18e6 * resistance);
}

/// Crank and Nicolson's step of a minute.
double Body::next(double body, double room) const {
  if (hours_ <= 0) return room;
  const double half = 1 / (2 * 60 * hours_);
  return (body * (1 - half) + 2 * half * room) / (1 + half);
}

Body::Body(const climate::AirSeries& air, Hours time_constant, Instant begin) : hours_(time_constant.count()) {
  double body = air.rows().empty() ? 0 : air.rows().front().air.temperature.value();
  std::vector<climate::AirRow> rows;
  for (const climate::AirRow& row : air.rows()) {
    const double room = row.air.temperature.value();
    if (hours_ <= 0) body = room;
    double sum = 0;
    for (double minute = 0; minute < minutes_a_row; ++minute) {
      if (row.from >= begin) minutes_.push_back(body);
      const double after = next(body, room);
      sum += (body + after) / 2;
      body = after;
    }
    if (row.from < begin) continue;
    rows.push_back(brought_to(row, Celsius(sum / minutes_a_row)));
    room_.push_back(room);
  }
  minutes_.push_back(body);
  air_ = climate::AirSeries(std::move(rows));
}

Kelvins Body::behind(Instant carried_in, Celsius from, Instant t) const {
  double body = from.value();
  const std::size_t last = std::min(minute(t), minutes_.size() - 1);
  for (std::size_t m = minute(carried_in); m < last; ++m) body = next(body, room_[m / 30]);
  return Kelvins(body - minutes_[last]);
}

std::optional<std::size_t> first_off(const climate::AirSeries& said, const climate::AirSeries& own) {
  for (std::size_t r = 0; r < own.rows().size(); ++r) {
    if (r >= said.rows().size()) return r;
    const Kelvins off = said.rows()[r].air.temperature - own.rows()[r].air.temperature;
    if (!(std::abs(off.value()) <= surface_slack.value())) return r;
  }
  return said.rows().size() > own.rows().size() ? std::optional(own.rows().size()) : std::nullopt;
}

climate::AirSeries at_temperatures(const climate::AirSeries& room, const climate::AirSeries& temperatures) {
  std::vector<climate::AirRow> rows;
  for (std::size_t r = 0; r < room.rows().size(); ++r) {
    const climate::AirRow& row = room.rows()[r];
    const Celsius t = temperatures.rows()[r].air.temperature;
    rows.push_back(t == row.air.temperature ? row : brought_to(row, t));
  }
  return climate::AirSeries(std::move(rows));
}

}  // namespace coatday::plan::checking
