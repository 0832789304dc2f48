#pragma once
// How a board would cup, finished as planned and in other ways.

#include <span>
#include <string>
#include <vector>

#include "plan/wood.h"
#include "plan/wood/coating.h"

namespace coatday::plan {

/// A board or round top of solid wood, across its grain; nothing for other shapes and cores.
[[nodiscard]] std::optional<wood::Board> board_of(const piece::Part&, MoistureContent initial);

struct Way {
  std::string name;
  std::vector<SideCoat> coats;
  bool edges_bare = false;
};
/// As planned, both faces alike where they are not, underside bare, and one coat fewer there.
[[nodiscard]] std::vector<Way> ways_to_finish(const std::vector<SideCoat>& planned);

/// The part of a course in which the board is between 6 and 14 % moist, where its coefficient holds.
struct CupCourse {
  std::vector<wood::Warp> by_middle;
  Cupping told;
  bool left_range = false;
};
/// Through these hours, at the low, middle and high diffusivity. Nothing where the board is never in the range.
[[nodiscard]] std::optional<CupCourse> cup_course(const wood::Board&, const Way&, std::span<const wood::Spell> hours,
                                                  std::span<const Instant> marks, Films&);

}  // namespace coatday::plan
