#pragma once
// The plane faces of each shape. Only this room includes it.
//
// A part that lies down to dry is coated in two passes. The less visible faces go first; the edges go with the show face, where a run is noticed
// and brushed out. Ends have no opposite face: along the grain wood hardly moves, so an uneven film there bends nothing. End grain is marked
// as if the part were wood; faces_of(Part) clears it for steel.

#include <vector>

#include "piece/shape.h"

namespace coatday::piece {

/// Underside first. All edges and ends go with the face.
[[nodiscard]] std::vector<Face> faces(const Board&);
/// Four trapezoids of true slant height and two ends. Back, left and top end first, so that each pass wets two sides that meet.
[[nodiscard]] std::vector<Face> faces(const TaperedLeg&);
[[nodiscard]] std::vector<Face> faces(const RectTube&);
/// Outer sizes; every board `thickness` thick; the back set in flush between the others. An outside face is the outer rectangle, its joints'
/// edges with it; an inside face is clear between the boards, `depth - thickness` deep; the front edges are the rim around the opening.
/// Insides, outside back and outside bottom first. No end grain: the joints hide it.
[[nodiscard]] std::vector<Face> faces(const Case&);
/// Front and back are width x height, with the walls of the recess round the panel. Back first. The ends of the stiles are left out.
[[nodiscard]] std::vector<Face> faces(const Door&);
/// As given; visible faces go second.
[[nodiscard]] std::vector<Face> faces(const FreeArea&);

}  // namespace coatday::piece
