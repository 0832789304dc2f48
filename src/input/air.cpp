// The shop's air: constant, a timetable alone, or outdoor hours under a timetable.
#include <fmt/core.h>

#include <algorithm>
#include <memory>
#include <utility>

#include "climate/shop_air.h"
#include "input/shop_file.h"

namespace coatday::input {
namespace {

using climate::HeatingRule;
using climate::Timetable;

HeatingRule read_rule(const Value& item, bool alone, bool has_night, Mistakes& mistakes) {
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
  if (alone) {
    if (!has_night) fields.need("otherwise");
    fields.need("humidity");
  } else if (fields.has("humidity")) {
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

Timetable read_timetable(const Fields& air, bool alone, Mistakes& mistakes) {
  Timetable table;
  Celsius night;
  if (air.take("night", night, parse_air_temperature)) table.night = night;
  for (const Value& item : air.list("timetable")) table.rules.push_back(read_rule(item, alone, air.has("night"), mistakes));
  if (alone && !covers_every_day(table)) {
    air.mistake("timetable", "a timetable alone needs a rule for every day of the week, in which 'dates' do not count");
  }
  return table;
}

plan::AirMaker constant(const Fields& air) {
  const auto fields = air.map("constant", "the constant air", {"temperature", "humidity"});
  climate::Air always;
  fields->must("temperature", always.temperature, parse_air_temperature);
  fields->must("humidity", always.humidity, parse_humidity);
  return [always](Instant, Instant) { return std::make_unique<climate::ConstantAir>(always); };
}

std::optional<climate::OutdoorYear> read_outdoors(const Fields& air, const std::filesystem::path& shop, Files& files, Mistakes& mistakes) {
  std::string name;
  if (!air.take("outdoors", name, parse_name)) return std::nullopt;
  const std::filesystem::path path = beside(shop, name);
  const Source* csv = files.text(path, air.where("outdoors"), mistakes);
  if (csv == nullptr) return std::nullopt;
  auto year = climate::OutdoorYear::parse(csv->text(), path.stem().string());
  if (!year) {
    mistakes.add({csv->name(), year.error().line, 1}, year.error().message);
    return std::nullopt;
  }
  return *std::move(year);
}

plan::AirMaker outdoors(const Fields& air, const std::filesystem::path& shop, const Zone& zone, Files& files, Mistakes& mistakes) {
  Hours time_constant{0};
  air.must("time constant", time_constant, parse_some_time);
  Timetable table = read_timetable(air, false, mistakes);
  auto year = read_outdoors(air, shop, files, mistakes);
  if (!year) return {};
  return [year = *std::move(year), table = std::move(table), time_constant, zone](Instant from, Instant until) {
    return std::make_unique<climate::HeatedShopAir>(year, table, time_constant, zone, from, until);
  };
}

}  // namespace

plan::AirMaker read_air(const Fields& shop, const std::filesystem::path& file, const Zone& zone, Files& files, Mistakes& mistakes) {
  if (shop.need("air") == nullptr) return {};
  const auto air = shop.map("air", "the air", {"constant", "outdoors", "time constant", "timetable", "night"});
  if (shop.find("air")->kind != Value::Kind::map) return {};
  const bool is_constant = air->has("constant");
  const bool from_outdoors = air->has("outdoors");
  if (is_constant && (from_outdoors || air->has("timetable")))
    air->mistake("constant", "constant air has no 'timetable' and no 'outdoors'");
  if (is_constant && air->has("night")) air->mistake("night", "constant air has no 'night'; give a 'timetable' in place of 'constant'");
  if (!from_outdoors && air->has("time constant")) air->mistake("time constant", "'time constant' goes with 'outdoors'");
  if (is_constant) return constant(*air);
  if (from_outdoors) return outdoors(*air, file, zone, files, mistakes);
  if (!air->has("timetable")) {
    shop.mistake("air", "the air needs 'constant', 'timetable' or 'outdoors'");
    return {};
  }
  Timetable table = read_timetable(*air, true, mistakes);
  return [table = std::move(table), zone](Instant, Instant) { return std::make_unique<climate::TimetableAir>(table, zone); };
}

}  // namespace coatday::input
