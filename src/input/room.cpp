#include "input/room.h"

#include <fmt/core.h>

#include "input/amounts.h"

namespace coatday::input {
namespace {

constexpr double fewest_changes = 0.01, most_changes = 100;  // an hour: they only catch slips, no source

Parsed<double> parse_air_changes(std::string_view typed) {
  auto number = parse_number(typed);
  if (!number || (*number >= fewest_changes && *number <= most_changes)) return number;
  return tl::make_unexpected(fmt::format("{} is out of range; expected how often an hour the room's air changes, {} to {}",
                                         in_quotes(typed), fewest_changes, most_changes));
}

Parsed<Kelvins> parse_lift(std::string_view typed) {
  auto lift = parse_temperature_difference(typed);
  if (!lift || *lift > Kelvins(0)) return lift;
  return tl::make_unexpected(fmt::format("{} is out of range; expected a difference above 0 K", in_quotes(typed)));
}

void read_heater(const Fields& air, climate::Room& room) {
  const auto fields = air.map("heater", "the heater", {"lifts", "power"});
  if (!fields) return;
  climate::Heater heater;
  Kilowatts power;
  const bool lifts = fields->must("lifts", heater.lift, parse_lift);
  if (fields->take("power", power, parse_power)) heater.power = power;
  if (lifts) room.heater = heater;
  if (!air.has("timetable") && !air.has("night")) air.mistake("heater", "a heater without 'timetable' or 'night' never runs");
}

void read_dehumidifier(const Fields& air, climate::Moisture& moisture) {
  const auto fields = air.map("dehumidifier", "the dehumidifier", {"set point", "removes"});
  if (!fields) return;
  climate::Dehumidifier dehumidifier;
  const bool set = fields->must("set point", dehumidifier.set_point, parse_humidity);
  if (fields->must("removes", dehumidifier.capacity, parse_water_rate) && set) moisture.dehumidifier = dehumidifier;
}

void read_moisture(const Fields& air, climate::Room& room) {
  if (!air.has("volume") && !air.has("air changes") && !air.has("moisture gain") && !air.has("dehumidifier")) return;
  climate::Moisture moisture;
  const bool volume = air.must("volume", moisture.volume, parse_room_volume);
  const bool changes = air.must("air changes", moisture.air_changes, parse_air_changes);
  air.take("moisture gain", moisture.gain, parse_water_rate);
  read_dehumidifier(air, moisture);
  if (volume && changes) room.moisture = moisture;
}

}  // namespace

const Keys& room_keys() {
  static const Keys keys{"time constant", "heater", "energy price", "volume", "air changes", "moisture gain", "dehumidifier"};
  return keys;
}

void refuse_room_keys(const Fields& air) {
  for (const std::string_view key : room_keys())
    if (air.has(key)) air.mistake(key, fmt::format("'{}' goes with 'outdoors'", key));
}

climate::Room read_room(const Fields& air) {
  climate::Room room;
  air.must("time constant", room.time_constant, parse_some_time);
  read_heater(air, room);
  read_moisture(air, room);
  return room;
}

}  // namespace coatday::input
