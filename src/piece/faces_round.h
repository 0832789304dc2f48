#pragma once
// The faces of what is round. See faces_flat.h.

#include <vector>

#include "piece/shape.h"

namespace coatday::piece {

/// As a board with one edge all round, which counts as end grain: half of it is (common practice, no source).
[[nodiscard]] std::vector<Face> faces(const RoundTop&);
/// A frustum of a cone between each two points, and two ends. It hangs or turns: one pass.
[[nodiscard]] std::vector<Face> faces(const TurnedLeg&);
/// The outside alone, and the ends where they are closed: a rod, a dowel, a capped tube.
[[nodiscard]] std::vector<Face> faces(const RoundTube&);
/// Spherical caps: the outer one through rim and foot, the inner one a wall smaller in radius and in depth. Outside first. Against a
/// straight-sided bowl with a foot a third to a half as wide as the rim, and a height of 1/4 to 2/5 of the diameter, the cap is right within 10 %.
[[nodiscard]] std::vector<Face> faces(const Bowl&);

/// Frusta of cones, outside and inside, with the foot and the floor. The inside follows the outside a wall nearer to the axis. Outside first.
[[nodiscard]] std::vector<Face> faces(const Vessel&);

}  // namespace coatday::piece
