#pragma once
// What a part weighs.

#include "piece/piece.h"

namespace coatday::piece {

/// What the shape is made of, hollows left out. A tube without a wall has one of 2 mm; a free shape without one is 20 mm of wood or 2 mm of
/// steel between its faces (common practice, no source).
[[nodiscard]] Litres volume(const Part&);
/// Wood as a dense hardwood at 12 % moisture content, the heavy side for other wood; steel 7850 kg/m3 (engineering handbooks, from memory).
[[nodiscard]] Kilograms mass(const Part&);

}  // namespace coatday::piece
