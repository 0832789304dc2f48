#include "climate/room.h"

#include <algorithm>
#include <cmath>

#include "climate/psychrometrics.h"

namespace coatday::climate {
namespace {

/// Newton's law of cooling towards an end.
Celsius towards(Celsius end, Celsius from, Hours span, Hours time_constant) { return end + (from - end) * std::exp(-span / time_constant); }

/// How long the way to `to` takes; the whole span where it is not reached in it.
Hours way(Celsius end, Celsius from, Celsius to, Hours span, Hours time_constant) {
  const double left = (to - end) / (from - end);
  if (left == 1) return Hours(0);
  if (!(left > 0 && left < 1)) return span;  // it moves away, or ends before
  return std::min(span, time_constant * -std::log(left));
}

}  // namespace

Celsius heated(const Room& room, Celsius from, const Surroundings& around, Hours span, Hours& heating) {
  const Celsius outside = around.temperature, full = outside + room.heater->lift;
  if (!around.set_point) return towards(outside, from, span, room.time_constant);
  const Celsius set = *around.set_point;
  const bool cold = from < set;
  const Hours reaching = way(cold ? full : outside, from, set, span, room.time_constant);
  if (cold) heating += reaching;
  if (reaching >= span) return towards(cold ? full : outside, from, span, room.time_constant);
  const Hours rest = span - reaching;  // at the set point, which only outdoors too warm or too cold make it leave
  heating += rest * std::clamp((set - outside) / room.heater->lift, 0.0, 1.0);
  const Celsius off = towards(outside, set, rest, room.time_constant), most = towards(full, set, rest, room.time_constant);
  return std::max(off, std::min(most, set));
}

HumidityRatio dried(const Moisture& room, HumidityRatio from, Celsius temperature, const Surroundings& around, Hours span, RoomWork& work) {
  const double mass = dry_air(room.volume, temperature, from, around.pressure).value();
  const double flow = room.air_changes * mass, share = -std::expm1(-room.air_changes * span.count());
  const double end = around.water.value() + room.gain.value() / flow;
  double water = from.value() + (end - from.value()) * share;
  const double per_kilogram = share / flow;  // what a kilogram an hour takes off in this span
  const auto at = [&](RelativeHumidity humidity) { return humidity_ratio({temperature, humidity}, around.pressure).value(); };
  if (room.dehumidifier) {
    const double rate = std::clamp((water - at(room.dehumidifier->set_point)) / per_kilogram, 0.0, room.dehumidifier->capacity.value());
    water -= rate * per_kilogram;
    work.removed += Kilograms(rate * span.count());
  }
  const double most = at(RelativeHumidity(1));
  if (water > most) {
    work.condensed += Kilograms((water - most) / per_kilogram * span.count());
    work.condensing += span;
    water = most;
  }
  return HumidityRatio(water);
}

Kilograms dry_air(CubicMetres volume, Celsius temperature, HumidityRatio water, Pascals pressure) {
  constexpr double gas_constant = 287.042;  // J/(kg K), of dry air: ASHRAE Handbook Fundamentals 2017, chapter 1, eq. 1
  return Kilograms(volume.value() * pressure.value() / (gas_constant * temperature.kelvin() * (1 + 1.607858 * water.value())));
}

}  // namespace coatday::climate
