#include "input/air.h"

#include <fmt/core.h>

#include <algorithm>
#include <memory>
#include <utility>

#include "climate/logged_air.h"
#include "climate/shop_air.h"
#include "input/air_log.h"
#include "input/amounts.h"
#include "input/room.h"
#include "input/spans.h"

namespace coatday::input {
namespace {

using climate::HeatingRule;
using climate::Timetable;
using AirNotes = std::vector<job::AirNote>;

/// What a rule of the timetable is completed by.
enum class Beside { nothing, constant, outdoors };

HeatingRule read_rule(const Value& item, Beside beside, bool has_night, Mistakes& mistakes) {
  const Fields fields(item, "a rule of the timetable", {"days", "dates", "heated", "otherwise", "humidity"}, mistakes);
  HeatingRule rule;
  fields.take("days", rule.days, parse_days);
  DateRange dates;
  if (fields.take("dates", dates, parse_dates)) {
    rule.first = dates.first;
    rule.last = dates.last;
  }
  fields.take("heated", rule.heated, parse_heated);
  fields.take("otherwise", rule.otherwise, parse_air_temperature);
  fields.take("humidity", rule.humidity, parse_humidity);
  if (beside == Beside::nothing) {
    if (!has_night) fields.need("otherwise");
    fields.need("humidity");
  } else if (beside == Beside::outdoors && fields.has("humidity")) {
    fields.mistake("humidity", "with 'outdoors' the humidity follows from the outdoor air; leave it out");
  }
  return rule;
}

bool covers_every_day(const Timetable& table) {
  unsigned days = 0;
  for (const HeatingRule& rule : table.rules) {
    if (rule.first) continue;
    if (rule.days.empty()) return true;
    for (const weekday day : rule.days) days |= 1U << day.c_encoding();
  }
  return days == 0x7F;
}

Timetable read_timetable(const Fields& air, Beside beside, Mistakes& mistakes) {
  Timetable table;
  Celsius night;
  if (air.take("night", night, parse_air_temperature)) table.night = night;
  for (const Value& item : air.list("timetable")) table.rules.push_back(read_rule(item, beside, air.has("night"), mistakes));
  if (beside == Beside::nothing && !covers_every_day(table)) {
    air.mistake("timetable", "a timetable alone needs a rule for every day of the week, in which 'dates' do not count");
  }
  return table;
}

climate::Air read_constant(const Fields& air) {
  const auto fields = air.map("constant", "the constant air", {"temperature", "humidity"});
  climate::Air always;
  fields->must("temperature", always.temperature, parse_air_temperature);
  fields->must("humidity", always.humidity, parse_humidity);
  return always;
}

/// What a timetable leaves open, hours, humidities and whole days, is as the constant air says.
job::AirMaker timetable_over_constant(const Fields& air, const Zone& zone, climate::KnownRoom& known, Mistakes& mistakes) {
  const climate::Air always = read_constant(air);
  Timetable table = read_timetable(air, Beside::constant, mistakes);
  known.heating = table;
  for (HeatingRule& rule : table.rules) {
    if (!rule.otherwise) rule.otherwise = always.temperature;
    if (!rule.humidity) rule.humidity = always.humidity;
  }
  return
      [table = std::move(table), always, zone](Instant, Instant) { return std::make_unique<climate::TimetableAir>(table, zone, always); };
}

job::AirMaker constant(const Fields& air) {
  const climate::Air always = read_constant(air);
  return [always](Instant, Instant) { return std::make_unique<climate::ConstantAir>(always); };
}

std::optional<climate::OutdoorYear> read_outdoors(const Fields& air, const std::filesystem::path& shop, const Zone& zone, Files& files,
                                                  AirNotes& notes, Mistakes& mistakes) {
  std::string name;
  if (!air.take("outdoors", name, parse_name)) return std::nullopt;
  const std::filesystem::path path = beside(shop, name);
  const Source* file = files.text(path, air.where("outdoors"), mistakes);
  if (file == nullptr) return std::nullopt;
  auto year = climate::OutdoorYear::parse(file->text(), path.stem().string());
  if (!year) {
    Files::wrong_table(*file, year.error(), mistakes);
    return std::nullopt;
  }
  if (auto far = year->far_clock(zone)) notes.push_back({path.filename().string(), *std::move(far)});
  for (const std::string& note : year->notes()) notes.push_back({path.filename().string(), note});
  return *std::move(year);
}

/// What heat costs, where that is known.
std::optional<shop::HeatingCost> read_heating(const Fields& air, const climate::Room& room) {
  const bool known = room.heater && room.heater->power;
  Money price;
  const bool priced = air.take("energy price", price, parse_price);
  if (priced && !known) air.mistake("energy price", "a price of energy needs the 'power' of the 'heater'");
  if (!known) return std::nullopt;
  return shop::HeatingCost{*room.heater->power, priced ? std::optional(price) : std::nullopt};
}

job::AirMaker outdoors(const Fields& air, const std::filesystem::path& shop, const Zone& zone, Files& files, ShopAir& result,
                       Mistakes& mistakes) {
  climate::KnownRoom& known = result.room;
  known.room = read_room(air);
  result.heating = read_heating(air, known.room);
  known.heating = read_timetable(air, Beside::outdoors, mistakes);
  known.outdoors = read_outdoors(air, shop, zone, files, result.notes, mistakes);
  if (!known.outdoors) return {};
  result.in = [zone](const climate::KnownRoom& room) -> job::AirMaker {
    return [room = std::make_shared<const climate::KnownRoom>(room), zone](Instant from, Instant until) {
      return std::make_unique<climate::HeatedShopAir>(*room->outdoors, room->heating, room->room, zone, from, until);
    };
  };
  return result.in(known);
}

job::AirMaker timetable(const Fields& air, const Zone& zone, climate::KnownRoom& known, Mistakes& mistakes) {
  known.heating = read_timetable(air, Beside::nothing, mistakes);
  return [table = known.heating, zone](Instant, Instant) { return std::make_unique<climate::TimetableAir>(table, zone); };
}

job::AirMaker logged(std::shared_ptr<const climate::Log> log, job::AirMaker next) {
  return [log = std::move(log), next = std::move(next)](Instant from, Instant until) {
    constexpr auto reach = climate::LoggedAir::reach;
    return std::make_unique<climate::LoggedAir>(log, next(from - reach, until + reach));
  };
}

}  // namespace

ShopAir read_air(const Fields& shop, const std::filesystem::path& file, const Zone& zone, Files& files, Mistakes& mistakes) {
  if (shop.need("air") == nullptr) return {};
  Keys keys{"log", "outdoors", "timetable", "night", "constant"};
  keys.insert(keys.begin() + 2, room_keys().begin(), room_keys().end());
  const auto air = shop.map("air", "the air", keys);
  if (shop.find("air")->kind != Value::Kind::map) return {};
  const bool has_constant = air->has("constant"), has_timetable = air->has("timetable"), from_outdoors = air->has("outdoors");
  if (has_constant && from_outdoors) air->mistake("constant", "'outdoors' leaves no hour to 'constant'; leave one of them out");
  if (has_constant && !has_timetable && !from_outdoors && air->has("night"))
    air->mistake("night", "constant air has no 'night'; give a 'timetable' in place of 'constant'");
  if (!from_outdoors) refuse_room_keys(*air);
  ShopAir result;
  if (from_outdoors) {
    result.maker = outdoors(*air, file, zone, files, result, mistakes);
  } else if (has_timetable) {
    result.maker = has_constant ? timetable_over_constant(*air, zone, result.room, mistakes) : timetable(*air, zone, result.room, mistakes);
  } else if (has_constant) {
    result.maker = constant(*air);
  } else if (air->has("log")) {
    air->mistake("log", "a log ends; the air needs 'outdoors', 'timetable' or 'constant' for what comes after it");
  } else {
    shop.mistake("air", "the air needs 'constant', 'timetable' or 'outdoors'");
  }
  if (const auto log = read_log(*air, file, zone, result.log, files, mistakes); log && result.maker) {
    result.notes.push_back({log->name, climate::span_text(*log, zone)});
    for (const std::string& note : log->notes) result.notes.push_back({log->name, note});
    result.maker = logged(log, std::move(result.maker));
    if (result.in) result.in = [log, in = std::move(result.in)](const climate::KnownRoom& room) { return logged(log, in(room)); };
  }
  return result;
}

}  // namespace coatday::input
