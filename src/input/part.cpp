#include "input/part.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>

#include "input/amounts.h"
#include "input/choices.h"
#include "input/part_check.h"
#include "input/shapes.h"
#include "input/wood.h"
#include "input/wood_part.h"

namespace coatday::input {
namespace {

using piece::Part;

const Keys part_keys{"part", "count",  "shape",          "species",  "material", "schedule",  "support", "kept at",
                     "mask", "except", "people to turn", "moisture", "cut",      "cup limit", "core",    "fixings"};

Parsed<bool> parse_steel(std::string_view typed) {
  const std::array<std::string_view, 1> words{"steel"};
  return choose(typed, "material", words).map([](std::size_t) { return true; });
}

SquareMetres area_of_mask(const Fields& fields) {
  SquareMetres area;
  int count = 1;
  const bool by_size = fields.has("size");
  if (by_size && fields.has("area")) fields.mistake("area", "'area' and 'size' are both given; one of them is enough");
  if (!by_size && fields.has("count")) fields.mistake("count", "'count' goes with 'size'");
  if (!by_size && !fields.has("area")) fields.mistake("face", "a mask needs 'area' or 'size'");
  fields.take("area", area, parse_area);
  if (fields.take("size", area, parse_rectangle) && fields.take("count", count, parse_positive_count)) area = area * count;
  return area;
}

void read_deviations(const Fields& fields, Part& part, Mistakes& mistakes) {
  for (const Value& item : fields.list("mask")) {
    const Fields mask(item, "a mask", {"face", "area", "size", "count", "reason"}, mistakes);
    piece::Mask m;
    m.where = mask.where();
    mask.must("face", m.face, parse_name);
    mask.take("reason", m.reason, parse_note);
    m.area = area_of_mask(mask);
    part.masks.push_back(std::move(m));
  }
  for (const Value& item : fields.list("except")) {
    const Fields except(item, "an exception", {"face", "coats", "reason"}, mistakes);
    piece::Exception e;
    e.where = except.where();
    except.must("face", e.face, parse_name);
    except.must("coats", e.coats, parse_coats);
    if (except.take("reason", e.reason, parse_note) && e.reason.empty()) except.mistake("reason", "the reason is empty");
    part.exceptions.push_back(std::move(e));
  }
}

// The shape decides which sizes a part has; with an unknown shape any size will do.
Keys keys_for(const Value& part) {
  Keys keys = part_keys;
  const auto add = [&keys](std::string_view shape) {
    for (const std::string_view key : shape_keys(shape)) keys.push_back(key);
  };
  const auto given = std::ranges::find(part.entries, "shape", &Entry::key);
  const auto shape = choose(given == part.entries.end() ? "" : given->value.text, "shape", shape_words());
  if (shape) add(shape_words()[*shape]);
  if (!shape) std::ranges::for_each(shape_words(), add);
  return keys;
}

// Whether the shape is known and all its sizes are.
bool read_sizes(const Fields& fields, Part& part, Mistakes& mistakes) {
  const std::size_t before = mistakes.count();
  std::size_t shape = 0;
  if (!fields.must("shape", shape, [](std::string_view typed) { return choose(typed, "shape", shape_words()); })) return false;
  part.shape = read_shape(shape_words()[shape], fields, mistakes);
  return mistakes.count() == before;
}

void apply(const Common& common, const Fields& fields, Part& part, Mistakes& mistakes) {
  part.species = common.species;
  part.support = common.support.value_or(piece::Support::points);
  part.schedule = common.schedule.value_or("");
  part.kept_at = common.kept_at;
  if (!common.schedule)
    mistakes.add(fields.where(), fmt::format("the part {} has no 'schedule', here or at its piece or order", in_quotes(part.name)));
  if (!common.species && !common.steel) {
    mistakes.add(fields.where(),
                 fmt::format("the part {} has no 'species' or 'material', here or at its piece or order", in_quotes(part.name)));
  }
}

}  // namespace

Common over(Common outer, const Fields& fields, const Surroundings& around, Mistakes& mistakes) {
  if (fields.has("schedule")) {
    outer.schedule.emplace();
    outer.schedule_at = fields.where("schedule");
    if (fields.take("schedule", outer.schedule, parse_name) && around.catalogue.schedule(*outer.schedule) == nullptr) {
      fields.mistake("schedule", unknown("schedule", *outer.schedule, keys_of(around.catalogue.schedules)));
    }
  }
  if (fields.has("species") && fields.has("material"))
    fields.mistake("material", "'species' and 'material' are both given; one of them is enough");
  if (fields.has("material")) {
    outer.species.reset();
    outer.steel = true;
    fields.take("material", outer.steel, parse_steel);
  }
  if (fields.has("species")) {
    outer.steel = false;
    outer.species.emplace();
    fields.take("species", outer.species, parse_species);
  }
  fields.take("kept at", outer.kept_at, parse_air_temperature);
  if (fields.has("moisture")) outer.readings = read_moisture(fields, around, mistakes);
  fields.take("cut", outer.cut, parse_ring_angle);
  fields.take("cup limit", outer.cup_limit, parse_length);
  if (fields.take("support", outer.support, parse_support)) outer.support_at = fields.where("support");
  return outer;
}

Part read_part(const Value& value, const Common& outer, const Surroundings& around, Mistakes& mistakes) {
  const Fields fields(value, "a part", keys_for(value), mistakes);
  Part part;
  part.where = fields.where();
  fields.must("part", part.name, parse_name);
  fields.take("count", part.count, parse_positive_count);
  const Common common = over(outer, fields, around, mistakes);
  apply(common, fields, part, mistakes);
  if (fields.take("people to turn", part.turning_people, parse_positive_count) && around.shop != nullptr &&
      part.turning_people > around.shop->people) {
    fields.mistake("people to turn", fmt::format("this takes {} people; the shop has {}", *part.turning_people, around.shop->people));
  }
  const bool has_sizes = read_sizes(fields, part, mistakes);
  const std::size_t before = mistakes.count();
  if (has_sizes) read_wood(fields, common, part, mistakes);
  read_deviations(fields, part, mistakes);
  if (has_sizes && mistakes.count() == before) check_part(part, common, around, mistakes);
  return part;
}

}  // namespace coatday::input
