#include "climate/shop_air.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "climate/psychrometrics.h"

namespace coatday::climate {
namespace {

/// So long before the first moment the room starts as the outdoor air is, so that nothing is left of that start: two weeks, or 12 times what
/// its temperature or its water takes. Whoever asks for a later or an earlier first moment then gets the same air.
std::chrono::hours spin_up(const Room& room) {
  constexpr Hours least = date::weeks(2), most = date::days(400);
  const Hours water = room.moisture ? Hours(1 / room.moisture->air_changes) : Hours(0);
  return std::chrono::ceil<std::chrono::hours>(std::clamp(12 * std::max(room.time_constant, water), least, most));
}

std::string air_text(const Air& air, Units units) {
  return format_temperature(air.temperature, units) + ", " + format_humidity(air.humidity);
}

/// "20 °C", or "18 °C to 20 °C" where rules differ.
std::string range_text(std::vector<Celsius> temperatures, Units units) {
  const auto [low, high] = std::minmax_element(temperatures.begin(), temperatures.end());
  if (*low == *high) return format_temperature(*low, units);
  return format_temperature(*low, units) + " to " + format_temperature(*high, units);
}

std::string timetable_text(const Timetable& timetable, Units units) {
  std::vector<Celsius> heated, otherwise;
  bool off = false;
  for (const HeatingRule& rule : timetable.rules) {
    for (const HeatedHours& hours : rule.heated) heated.push_back(hours.set_point);
    const std::optional<Celsius> cool = timetable.night ? timetable.night : rule.otherwise;
    if (cool) otherwise.push_back(*cool);
    off = off || !cool;
  }
  if (timetable.rules.empty() && timetable.night) otherwise.push_back(*timetable.night);
  if (heated.empty() && otherwise.empty()) return "no heating";
  std::string text = heated.empty() ? "" : range_text(heated, units) + " in the heated hours, otherwise ";
  if (otherwise.empty()) return text + "off";
  return text + range_text(otherwise, units) + (off ? " or off" : "");
}

}  // namespace

std::string ConstantAir::describe(Units units) const { return air_text(air_, units) + " at all times"; }

Air TimetableAir::at(Instant t) const {
  const LocalTime local = zone_.to_local(t);
  const HeatingRule* rule = timetable_.on(day_of(local));
  if (rule == nullptr && constant_) return *constant_;
  const auto temperature = timetable_.set_point(local);
  if (!rule || !temperature || !rule->humidity)
    throw std::out_of_range("the timetable gives no temperature or no humidity for " + day_and_time(local));
  return {*temperature, *rule->humidity};
}

Origin TimetableAir::origin(Instant t) const {
  return timetable_.on(day_of(zone_.to_local(t))) == nullptr ? Origin::constant : Origin::timetable;
}

std::string TimetableAir::describe(Units units) const {
  const std::string text = timetable_text(timetable_, units);
  return constant_ ? text + "; on other days " + air_text(*constant_, units) : text;
}

HeatedShopAir::HeatedShopAir(OutdoorYear outdoors, Timetable timetable, const Room& room, Zone zone, Instant from, Instant until)
    : outdoors_(std::move(outdoors)),
      timetable_(std::move(timetable)),
      room_(room),
      zone_(std::move(zone)),
      begin_(AirSeries::row_start(from)) {
  if (!(room_.time_constant > Hours(0))) throw std::invalid_argument("HeatedShopAir: the time constant must be > 0");
  if (room_.heater && !(room_.heater->lift > Kelvins(0))) throw std::invalid_argument("HeatedShopAir: the heater's lift must be > 0");
  if (room_.moisture && !(room_.moisture->volume > CubicMetres(0) && room_.moisture->air_changes > 0))
    throw std::invalid_argument("HeatedShopAir: volume and air changes must be > 0");
  const Instant end = AirSeries::row_start(until) + AirSeries::step;
  Instant t = begin_ - spin_up(room_);
  RoomState state{outdoors_.at(t).temperature, humidity_ratio(outdoors_.at(t), outdoors_.pressure())};
  RoomWork ignored;
  for (; t < begin_; t += step) state = next(state, t, t + step, ignored);
  for (; t < end; t += step) {
    states_.push_back(state);
    state = next(state, t, t + step, works_.emplace_back());
  }
  states_.push_back(state);
}

/// Newton's law of cooling against a heater without a limit, whose setting at the step's start lasts until the step's end and whose setting
/// at `t` counts at once.
Celsius HeatedShopAir::held(Celsius at_step, Celsius outside, Instant step_start, Instant t) const {
  Celsius temperature = outside + (at_step - outside) * std::exp(-Hours(t - step_start) / room_.time_constant);
  for (const Instant setting : {step_start, t})
    if (const auto set_point = timetable_.set_point(zone_.to_local(setting))) temperature = std::max(temperature, *set_point);
  return temperature;
}

/// The shop at `t`, within a step after a known state.
RoomState HeatedShopAir::next(const RoomState& at_step, Instant step_start, Instant t, RoomWork& work) const {
  const Air air = outdoors_.at(step_start + step / 2);
  Surroundings around{air.temperature, {}, outdoors_.pressure(), {}};
  RoomState state = at_step;
  if (room_.heater) {
    around.set_point = timetable_.set_point(zone_.to_local(step_start));
    state.temperature = heated(room_, at_step.temperature, around, Hours(t - step_start), work.heating);
  } else {
    state.temperature = held(at_step.temperature, air.temperature, step_start, t);
  }
  if (room_.moisture && t > step_start) {
    around.water = humidity_ratio(air, outdoors_.pressure());
    state.water = dried(*room_.moisture, at_step.water, state.temperature, around, Hours(t - step_start), work);
  }
  return state;
}

Air HeatedShopAir::at(Instant t) const {
  const Instant end = begin_ + static_cast<int>(states_.size() - 1) * step;
  if (t < begin_ || t > end) throw std::out_of_range("HeatedShopAir: no air at that time");
  const auto steps = (t - begin_) / step;
  RoomWork ignored;
  const RoomState state = next(states_[static_cast<std::size_t>(steps)], begin_ + steps * step, t, ignored);
  const HumidityRatio water = room_.moisture ? state.water : humidity_ratio(outdoors_.at(t), outdoors_.pressure());
  return {state.temperature, std::min(relative_humidity(state.temperature, water, outdoors_.pressure()), RelativeHumidity(1))};
}

std::optional<RoomWork> HeatedShopAir::work(Instant from, Instant until) const {
  RoomWork sum;
  const Instant first = std::max(from, begin_);
  for (auto i = (first - begin_ + step - std::chrono::seconds(1)) / step; begin_ + i * step < until; ++i) {
    if (static_cast<std::size_t>(i) >= works_.size()) break;
    sum += works_[static_cast<std::size_t>(i)];
  }
  return sum;
}

std::string HeatedShopAir::describe(Units units) const {
  std::string text = timetable_text(timetable_, units);
  if (room_.moisture && room_.moisture->dehumidifier)
    text += "; dehumidifier set to " + format_humidity(room_.moisture->dehumidifier->set_point);
  return text + "; " + outdoors_.describe(units);
}

}  // namespace coatday::climate
