#pragma once
// Parts: what they are made of, how they are finished, and which faces deviate.

#include <optional>
#include <string>

#include "input/fields.h"
#include "input/surroundings.h"
#include "piece/piece.h"
#include "wood/movement.h"

namespace coatday::input {

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

}  // namespace coatday::input
