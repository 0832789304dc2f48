#pragma once
// What is used up or needed besides finish, in the words of who uses these units.

#include <optional>
#include <span>
#include <vector>

#include "job/plan.h"

namespace coatday::planner {

struct DryWork {
  int grit = 0;
  SquareMetres area;
  bool between_coats = false;
};

/// Items that lie on points at some time; each counts once, since points serve coat after coat.
struct OnPoints {
  Metres length;
  int items = 0;
};

/// Sheets by grit, coarse first: one sheet for 1 m² of wood up to grit 180, for 1.5 m² above it or between coats.
[[nodiscard]] std::vector<job::Sundry> abrasives(std::span<const DryWork>, Units);
/// Two for each session of a coat that is wiped; none without one.
[[nodiscard]] std::optional<job::Sundry> rags(int wiped_sessions);
/// Four an item, six for an item longer than 1.5 m; none without items.
[[nodiscard]] std::optional<job::Sundry> points(std::span<const OnPoints>, Units);

}  // namespace coatday::planner
