#pragma once
// How far a board bends when its moisture differs from face to face.

#include <span>

#include "quantity/quantity.h"

namespace coatday::wood {

using Curvature = Quantity<struct CurvatureTag>;              ///< 1/m; positive: the face is the longer side, and bulges
using NewtonsPerMetre = Quantity<struct NewtonsPerMetreTag>;  ///< along the grain
using Gigapascals = Quantity<struct GigapascalsTag>;

/// Of a strip that is free to bend: (12 / h³) times the integral of strain(z) z dz. `strain` holds the means of equal cells from the back
/// to the face; of second order in the cells, exact for equal halves. Source: elementary beam theory; for two layers Timoshenko 1925.
[[nodiscard]] Curvature free_curvature(std::span<const double> strain, Metres thickness);
/// The same of moisture contents with a coefficient of change for each 1 %.
[[nodiscard]] Curvature free_curvature(std::span<const double> moisture, double coefficient, Metres thickness);

/// Depth of the arc across the width: curvature w² / 8, for arcs that are shallow.
[[nodiscard]] Metres sag(Curvature, Metres width);

/// A top that its base holds along both edges and the middle, so that it may slide but not lift.
struct HeldTop {
  Metres bow;                    ///< what is left between the lines: 2/27 of the free sag
  NewtonsPerMetre at_each_edge;  ///< the pull there; the middle pushes back with twice as much
};
/// Elastic beam of uniform free curvature on three lines that do not yield: M = 1.5 E I curvature at the middle, none at the edges. Creep
/// lessens the force with time and is left out: the force is an upper bound. Source: elementary beam theory.
[[nodiscard]] HeldTop held(Curvature free, Metres width, Metres thickness, Gigapascals modulus_across);

}  // namespace coatday::wood
