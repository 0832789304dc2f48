#pragma once
// Who turns a part over, and how long it takes.

#include "piece/piece.h"
#include "shop/shop.h"

namespace coatday::job {

/// What one person lifts at most, in the best posture: the load constant of the revised NIOSH lifting equation (Waters, Putz-Anderson and Garg
/// 1993; seen as quoted by an occupational health centre).
inline constexpr Kilograms lifted_alone{23};
[[nodiscard]] bool too_heavy_for_one(const piece::Part&);

/// As the part says; else two for what is too heavy for one, where the shop has two.
[[nodiscard]] int turning_people(const piece::Part&, const shop::Shop&);

/// Of one item. As the shop says; else 10 s, 10 s for each kilogram that a person holds, and 20 s for each metre of its longest side: common
/// practice, no source. A slat takes half a minute, a room's door some minutes.
[[nodiscard]] Hours turning_time(const piece::Part&, const shop::Shop&);

}  // namespace coatday::job
