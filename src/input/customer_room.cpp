#include "input/customer_room.h"

#include <fmt/core.h>

#include <array>

#include "climate/customer_room.h"
#include "input/amounts.h"
#include "input/wood.h"

namespace coatday::input {
namespace {

using climate::Air;

const Keys customer_room_keys{"seasons", "outdoors", "heated", "cooled", "no drier than", "no damper than"};
constexpr std::array<std::string_view, 12> month_words{"jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"};

void read_season(const Entry& entry, std::array<std::optional<Air>, 12>& months, Mistakes& mistakes) {
  const auto named = parse_months(entry.key);
  if (!named) mistakes.add(entry.value.source->location(entry.at), named.error());
  if (entry.value.kind != Value::Kind::text) {
    mistakes.add(entry.value.where(), "expected a temperature and a humidity, such as 20 °C 40 %");
    return;
  }
  const auto air = parse_air(entry.value.text);
  if (!air) mistakes.add(entry.value.where(), air.error());
  if (!named) return;
  for (const unsigned month : *named) {
    std::optional<Air>& into = months[month - 1];
    if (into) mistakes.add(entry.value.source->location(entry.at), fmt::format("{} stands in two seasons", month_words[month - 1]));
    into = air.value_or(Air{Celsius(20), RelativeHumidity(0.5)});
  }
}

job::AirMaker seasons(const Fields& room, const Surroundings& around, Mistakes& mistakes) {
  for (const char* key : {"heated", "cooled", "no drier than", "no damper than"}) {
    if (room.has(key)) room.mistake(key, fmt::format("'{}' goes with 'outdoors'", key));
  }
  const Value& given = *room.find("seasons");
  if (given.kind != Value::Kind::map) {
    room.mistake("seasons", "expected months with their air, such as 'nov-apr: 20 °C 35 %'");
    return {};
  }
  std::array<std::optional<Air>, 12> months;
  const std::size_t before = mistakes.count();
  for (const Entry& entry : given.entries) read_season(entry, months, mistakes);
  if (mistakes.count() != before) return {};
  std::array<Air, 12> all;
  std::string open;
  for (std::size_t m = 0; m < 12; ++m) {
    if (months[m]) all[m] = *months[m];
    if (!months[m]) open += (open.empty() ? "" : ", ") + std::string(month_words[m]);
  }
  if (!open.empty()) room.mistake("seasons", "the seasons leave out " + open);
  const Zone zone = around.shop == nullptr ? Zone() : around.shop->zone;
  return [all, zone](Instant, Instant) { return std::make_unique<climate::MonthlyAir>(all, zone); };
}

job::AirMaker outdoors(const Fields& room, const std::filesystem::path& order, const Surroundings& around, Mistakes& mistakes) {
  std::string name;
  climate::HouseControl control;
  const bool heated = room.must("heated", control.heated, parse_air_temperature);
  if (room.take("cooled", control.cooled, parse_air_temperature) && heated && *control.cooled < control.heated)
    room.mistake("cooled", "the room is cooled below what it is heated to");
  room.take("no drier than", control.least, parse_humidity);
  if (room.take("no damper than", control.most, parse_humidity) && control.least && *control.most < *control.least)
    room.mistake("no damper than", "this is drier than 'no drier than'");
  if (!room.take("outdoors", name, parse_name) || around.files == nullptr) return {};
  const std::filesystem::path path = beside(order, name);
  const Source* file = around.files->text(path, room.where("outdoors"), mistakes);
  if (file == nullptr) return {};
  auto year = climate::OutdoorYear::parse(file->text(), path.stem().string());
  if (!year) {
    Files::wrong_table(*file, year.error(), mistakes);
    return {};
  }
  return [house = climate::HouseAir(*std::move(year), control)](Instant, Instant) { return std::make_unique<climate::HouseAir>(house); };
}

}  // namespace

job::AirMaker read_customer_room(const Fields& order, const std::filesystem::path& file, const Surroundings& around, Mistakes& mistakes) {
  const Value* given = order.find("customer room");
  if (given == nullptr) return {};
  const auto room = order.map("customer room", "the customer's room", customer_room_keys);
  if (given->kind != Value::Kind::map) return {};
  if (room->has("seasons") == room->has("outdoors")) {
    order.mistake("customer room", "the customer's room needs either 'seasons' or 'outdoors'");
    return {};
  }
  return room->has("seasons") ? seasons(*room, around, mistakes) : outdoors(*room, file, around, mistakes);
}

}  // namespace coatday::input
