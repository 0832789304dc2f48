#pragma once
// How a board would cup if it were finished as planned, or otherwise.

#include <array>
#include <span>
#include <string>
#include <vector>

#include "job/wood_findings.h"
#include "planner/wood/coating.h"

namespace coatday::planner {

/// A board or round top of solid wood, across its grain; nothing for other shapes and cores.
[[nodiscard]] std::optional<wood::Board> board_of(const piece::Part&, MoistureContent initial);

struct FinishOption {
  std::string name;
  std::vector<SideCoat> coats;
  bool edges_bare = false;
};
/// As planned, both faces alike where they are not, underside bare, one coat fewer there, and at last the edges bare.
[[nodiscard]] std::vector<FinishOption> finish_options(const std::vector<SideCoat>& planned);

/// At the low, middle and high diffusivity.
using CupCourses = std::array<std::vector<wood::Warp>, 3>;
[[nodiscard]] CupCourses cup_courses(const wood::Board&, const std::vector<SideCoat>&, std::span<const wood::AirSpan> hours, Films&);
/// The same board with its edges bare: its curvature dies away towards them.
[[nodiscard]] CupCourses with_bare_edges(CupCourses, const wood::Board&, std::span<const wood::AirSpan> hours);

/// Of the time in which the board is between 6 and 14 % moist, where its coefficient holds.
struct CupSummary {
  job::Cupping cupping;
  bool left_range = false;  ///< for some of the time
};
/// Nothing where it never is.
[[nodiscard]] std::optional<CupSummary> summarise(CupCourses, const std::string& way, std::span<const Instant> marks);

}  // namespace coatday::planner
