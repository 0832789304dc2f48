#pragma once
// How much a board moves across its grain.

#include <string>

#include <tl/expected.hpp>

#include "wood/moisture.h"
#include "wood/species.h"

namespace coatday::wood {

/// Degrees between the growth rings and the wide face: 0 flat, 90 quarter.
using RingAngle = Quantity<struct RingAngleTag>;
inline constexpr RingAngle flat_cut{0}, quarter_cut{90};

/// Change across the width for each 1 % of moisture content: C_R sin² + C_T cos² of the angle, the normal strain along an axis between
/// two principal ones (elementary mechanics). That the rings are straight and cross the whole width at one angle is a judgement.
[[nodiscard]] double coefficient_across(const Species&, RingAngle);

/// The range of moisture content in which the coefficients hold. Source: Wood Handbook (FPL-GTR-190) eq. 13-2.
inline constexpr MoistureContent driest_for_movement{0.06}, dampest_for_movement{0.14};
[[nodiscard]] constexpr bool holds_for_movement(MoistureContent m) { return m >= driest_for_movement && m <= dampest_for_movement; }

/// Change of a width that was measured at `from`, negative where it shrinks; refused, with the reason, where `from` or `to` is outside 6 to 14 %.
[[nodiscard]] tl::expected<Metres, std::string> movement(Metres width, double coefficient, MoistureContent from, MoistureContent to);

}  // namespace coatday::wood
