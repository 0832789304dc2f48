#pragma once
// What an order knows of a wooden part beside its sizes: how moist it is, how it was cut, and how it is held.

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/location.h"
#include "quantity/time.h"
#include "wood/fixing.h"

namespace coatday::piece {

/// What is under the faces. Only solid wood moves across its grain as the species says.
enum class Core : std::uint8_t { solid, plywood, mdf, particleboard };
[[nodiscard]] std::string_view word(Core);

/// A reading of a moisture meter.
struct MeterReading {
  MoistureContent moisture;
  std::optional<Instant> at;  ///< none: when the plan starts
  std::string place;          ///< on the part, in the maker's words
  Location where;
};

/// How a screw holds the part to its base.
enum class FixingKind : std::uint8_t { hole, slot, button, fixed };
[[nodiscard]] std::string_view word(FixingKind);

struct Fixing {
  FixingKind kind = FixingKind::slot;
  std::string name;       ///< in the maker's words; may be empty
  wood::Fixing measures;  ///< a button: an opening of twice its play and no shank; fixed: none of either
  Location where;
};

struct Solid {
  Core core = Core::solid;
  std::vector<MeterReading> readings;
  std::optional<wood::RingAngle> cut;  ///< none: not said
  std::optional<Metres> cup_limit;     ///< as much as its width may be out of flat
  std::vector<Fixing> fixings;
};

}  // namespace coatday::piece
