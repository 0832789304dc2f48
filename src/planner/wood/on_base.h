#pragma once
// A top on its base, through the seasons of the room where it will live.

#include <array>
#include "job/wood_findings.h"

#include "planner/wood/air_hours.h"

namespace coatday::planner {

/// The mean equilibria of a year's months, January first.
using Months = std::array<MoistureContent, 12>;
/// Of a year of the room's air from then on. Months begin in this zone.
[[nodiscard]] Months months_of(AirHours& room, Instant from, const Zone&);

/// Seasons, play at the edges and the check of each fixing. `board.when_fixed`, width and coefficient are known. Wood is assumed to
/// follow the months wholly. That is more than it does through a film, so its fixings are on the safe side.
void move_with(const Months&, const piece::Solid&, job::WoodBoard& board);

}  // namespace coatday::planner
