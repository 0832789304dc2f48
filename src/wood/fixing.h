#pragma once
// A top on its base: the play that its fixings need as it moves across the grain.

#include <string>

#include "wood/movement.h"

namespace coatday::wood {

/// A hole or a slot across the grain, in which a screw slides. Distances across the grain.
struct Fixing {
  Metres from_fixed_point;  ///< where the top may not slide: its middle, or an edge; >= 0
  Metres opening;           ///< diameter of the hole, or length of the slot
  Metres shank;             ///< diameter
};

struct Play {
  Metres inwards, outwards;  ///< the screw moves by as much towards the fixed point, and away from it; both >= 0
  Metres room;               ///< to each side of a shank that stands in the middle of its opening; negative where it does not fit
  [[nodiscard]] Metres needed() const { return inwards > outwards ? inwards : outwards; }
  [[nodiscard]] Metres short_by() const { return room < needed() ? needed() - room : Metres(0); }
  [[nodiscard]] bool passes() const { return short_by() == Metres(0); }
};

/// Moisture contents of the top when it is fixed, and the ends of its year. Refused, with the reason, where one is outside 6 to 14 %, where the
/// coefficients do not hold. The base does not move.
struct Season {
  MoistureContent fixed, driest, dampest;
};
[[nodiscard]] tl::expected<Play, std::string> play(const Fixing&, double coefficient, const Season&);

/// The smallest opening that passes for a shank that stands in its middle.
[[nodiscard]] tl::expected<Metres, std::string> opening_needed(const Fixing&, double coefficient, const Season&);

/// An eighth of an inch all round a shank, as many shops drill it (common practice, no source): to compare, never to rely on.
inline constexpr Metres customary_room{0.0254 / 8};

}  // namespace coatday::wood
