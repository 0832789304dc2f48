#pragma once
// How slowly a part comes to the temperature of the room.

#include "piece/piece.h"
#include "quantity/time.h"

namespace coatday::piece {

/// What heat has to go through.
struct Section {
  Metres thickness;
  Metres depth;  ///< the volume behind a unit of surface
};

/// A board's depth is half its thickness; that of a square or round section a quarter, where it is widest; that of a tube its wall, since the
/// inside hardly helps. A tube or a free shape of which no wall is given counts as solid, the slow side: a free shape as a slab as thick as
/// its smallest size.
[[nodiscard]] Section section(const Shape&);

/// rho c V/A R to the minute: see climate/surface.h. Wood as a dense hardwood at 12 % moisture content and 20 °C; steel 7850 kg/m3 and
/// 490 J/(kg K) (plain carbon steel, engineering handbooks, from memory).
[[nodiscard]] Hours time_constant(const Part&);

}  // namespace coatday::piece
