#include "input/wood_part.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>

#include "input/amounts.h"
#include "input/choices.h"
#include "input/wood.h"
#include "input/work.h"

namespace coatday::input {
namespace {

using namespace std::string_view_literals;
using piece::Fixing;
using piece::FixingKind;

Parsed<piece::Core> parse_core(std::string_view typed) {
  return choose(typed, "core", std::array{"solid"sv, "plywood"sv, "MDF"sv, "particleboard"sv}).map([](std::size_t i) {
    return static_cast<piece::Core>(i);
  });
}

Parsed<FixingKind> parse_fixing_kind(std::string_view typed) {
  return choose(typed, "kind of fixing", std::array{"hole"sv, "slot"sv, "button"sv, "fixed"sv}).map([](std::size_t i) {
    return static_cast<FixingKind>(i);
  });
}

/// The key that says how much room there is; none where there is none.
std::string_view room_key(FixingKind kind) {
  switch (kind) {
    case FixingKind::hole:
      return "hole";
    case FixingKind::slot:
      return "slot";
    case FixingKind::button:
      return "play";
    case FixingKind::fixed:
      break;
  }
  return "";
}

void read_room(const Fields& fields, Fixing& fixing) {
  const std::string_view own = room_key(fixing.kind);
  for (const std::string_view key : {"hole"sv, "slot"sv, "play"sv}) {
    if (key != own && fields.has(key)) fields.mistake(key, fmt::format("a fixing of kind {} has no '{}'", word(fixing.kind), key));
  }
  const bool screwed = fixing.kind == FixingKind::hole || fixing.kind == FixingKind::slot;
  if (!screwed && fields.has("shank")) fields.mistake("shank", fmt::format("a fixing of kind {} has no 'shank'", word(fixing.kind)));
  if (own.empty() || !fields.must(own, fixing.measures.opening, parse_length)) return;
  if (!screwed) {
    fixing.measures.opening = fixing.measures.opening * 2;
  } else if (fields.must("shank", fixing.measures.shank, parse_length) && fixing.measures.shank > fixing.measures.opening) {
    fields.mistake("shank", fmt::format("the shank is thicker than the {}", own));
  }
}

Fixing read_fixing(const Value& item, std::optional<Metres> width, Mistakes& mistakes) {
  const Fields fields(item, "a fixing", {"name", "kind", "shank", "hole", "slot", "play", "distance"}, mistakes);
  Fixing fixing;
  fixing.where = fields.where();
  fields.take("name", fixing.name, parse_name);
  if (fields.must("kind", fixing.kind, parse_fixing_kind)) read_room(fields, fixing);
  if (fields.must("distance", fixing.measures.from_fixed_point, parse_distance) && width && fixing.measures.from_fixed_point > *width)
    fields.mistake("distance", "this is farther than the part is wide; it is measured across the grain, from where the part may not slide");
  return fixing;
}

/// Across the grain; nothing for a shape that is not screwed to a base as a top is.
std::optional<Metres> width_of(const piece::Shape& shape) {
  if (const auto* board = std::get_if<piece::Board>(&shape)) return board->width;
  if (const auto* top = std::get_if<piece::RoundTop>(&shape)) return top->diameter;
  return std::nullopt;
}

}  // namespace

std::vector<piece::MeterReading> read_moisture(const Fields& fields, const Surroundings& around, Mistakes& mistakes) {
  const Value* value = fields.find("moisture");
  std::vector<piece::MeterReading> readings;
  if (value == nullptr) return readings;
  if (value->kind == Value::Kind::text) {
    piece::MeterReading reading;
    reading.where = value->where();
    if (fields.take("moisture", reading.moisture, parse_moisture)) readings.push_back(std::move(reading));
    return readings;
  }
  const Zone zone = around.shop == nullptr ? Zone() : around.shop->zone;
  for (const Value& item : fields.list("moisture")) {
    const Fields of(item, "a moisture reading", {"reading", "on", "at"}, mistakes);
    piece::MeterReading reading;
    reading.where = of.where();
    of.take("on", reading.at, instant_in(zone));
    of.take("at", reading.place, parse_name);
    if (of.must("reading", reading.moisture, parse_moisture)) readings.push_back(std::move(reading));
  }
  if (fields.has_empty_list("moisture")) fields.mistake("moisture", "no reading in the list");
  return readings;
}

void read_wood(const Fields& fields, const Common& common, piece::Part& part, Mistakes& mistakes) {
  if (!part.wood()) {
    for (const std::string_view key : {"core"sv, "fixings"sv, "moisture"sv, "cut"sv, "cup limit"sv}) {
      if (fields.has(key)) fields.mistake(key, fmt::format("'{}' goes with a part of wood", key));
    }
    return;
  }
  part.solid.readings = common.readings;
  part.solid.cut = common.cut;
  part.solid.cup_limit = common.cup_limit;
  fields.take("core", part.solid.core, parse_core);
  const auto width = width_of(part.shape);
  for (const Value& item : fields.list("fixings")) part.solid.fixings.push_back(read_fixing(item, width, mistakes));
  if (part.solid.fixings.empty()) return;
  if (!width) fields.mistake("fixings", "fixings go with a board or a round top");
  if (part.solid.core != piece::Core::solid)
    fields.mistake("fixings", fmt::format("{} hardly moves; its fixings need no check", word(part.solid.core)));
}

}  // namespace coatday::input
