#pragma once
// The order from its file: pieces, parts, shapes, and the work around the finishing.

#include <optional>
#include <string>

#include "input/choices.h"
#include "input/fields.h"
#include "input/files.h"
#include "job/job.h"

namespace coatday::input {

/// What an order is read against. No shop where its file has mistakes: what depends on it is then not judged.
struct Surroundings {
  const finish::Catalogue& catalogue;
  const shop::Shop* shop = nullptr;
  Files* files = nullptr;  ///< where further ones are read from
};

[[nodiscard]] const Keys& order_keys();
[[nodiscard]] job::Order read_order(const Fields&, const std::string& file, const Surroundings&, Mistakes&);

/// What may be said at the order, a piece or a part; the nearest counts.
struct Common {
  std::optional<std::string> schedule;
  std::optional<std::string> species;
  bool steel = false;
  std::optional<piece::Support> support;
  std::optional<Celsius> kept_at;
  std::vector<piece::MeterReading> readings;
  std::optional<wood::RingAngle> cut;
  std::optional<Metres> cup_limit;
  Location schedule_at;
  Location support_at;
};
/// The item's own values over the outer ones.
[[nodiscard]] Common over(Common outer, const Fields&, const Surroundings&, Mistakes&);

/// The part; its id is made by the caller.
[[nodiscard]] piece::Part read_part(const Value&, const Common& outer, const Surroundings&, Mistakes&);

/// The keys of a part's sizes, which depend on its shape. Empty for an unknown shape.
[[nodiscard]] Keys shape_keys(std::string_view shape_word);
[[nodiscard]] const Keys& shape_words();
/// Needs a known shape word. Sizes that cannot be are told.
[[nodiscard]] piece::Shape read_shape(std::string_view shape_word, const Fields&, Mistakes&);

/// What a part that was read well does not agree with: its faces, its schedule, the drying places.
void check_part(const piece::Part&, const Common&, const Surroundings&, Mistakes&);

}  // namespace coatday::input
