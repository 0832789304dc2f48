#pragma once
// What becomes of an order's wood: whether it is ready to be coated, how its boards cup, how they move on their base.

#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "job/plan.h"
#include "wood/cup.h"
#include "wood/fixing.h"
#include "wood/warp.h"

namespace coatday::job {

/// A part's moisture against the shop's air and the room's.
struct WoodReady {
  MoistureContent now;    ///< when the plan starts, all through
  bool measured = false;  ///< by a meter; else as wood that lay in the shop's air since `lay_since`
  Instant lay_since;
  std::optional<MoistureContent> drier, damper;              ///< readings of the latest day, where they differ
  MoistureContent shop;                                      ///< the equilibrium of the shop's air over the week from then on
  std::optional<MoistureContent> room_driest, room_dampest;  ///< the months' means where it will live
  MoistureContent band;                                      ///< it is ready so near to the shop's equilibrium
  bool ready = false;
  /// When it is, by the middle of the published spread of diffusion, and by its high and low end. Nothing: not within a year.
  finish::PerEstimate<std::optional<Instant>> ready_at;

  [[nodiscard]] bool suits_room() const { return !room_driest || (now + band >= *room_driest && now - band <= *room_dampest); }
};

/// How a board would cup if it were finished in one way.
struct Cupping {
  std::string way;              ///< "as planned", "underside bare", "one coat fewer underneath", "edges bare"
  wood::Warp highest, settled;  ///< by the middle of the spread; positive: the face bulges, negative: it is hollow
  Metres least, most;           ///< highest over the whole spread, by size
  Metres settled_least, settled_most;
  std::vector<Metres> at_marks;  ///< by the middle, at WoodFindings::marks
};

/// A season of the room, three months of it.
struct SeasonWidth {
  std::string name;                          ///< "winter"
  MoistureContent equilibrium;               ///< the mean
  tl::expected<Metres, std::string> change;  ///< of the width, since it was fixed
};

struct FixingCheck {
  const piece::Fixing* fixing = nullptr;
  tl::expected<wood::Play, std::string> play;
  Metres opening_needed;  ///< hole, slot or twice a button's play; 0 where the play is not known
  bool at_least = false;  ///< the room leaves the range in which the coefficients hold: the value is the least
  [[nodiscard]] bool short_of_room() const { return play && !play->passes(); }
};

/// How long a board may lie after a step's coat on one face, before the other follows.
struct OneFaceLimit {
  std::string step;  ///< its name
  Hours longest{0};
};

/// A board or round top of solid wood across its grain.
struct WoodBoard {
  Metres thickness, width;
  double coefficient = 0;  ///< of change for each 1 %
  bool cut_said = false;
  std::optional<Metres> cup_limit;
  std::vector<OneFaceLimit> one_face;  ///< with a limit to its cup, where that is less than the shop's own time
  std::vector<Cupping> cups;           ///< empty: see `no_cup`
  std::string no_cup;
  wood::HeldTop held;                  ///< the highest cup as planned, where its base holds it
  MoistureContent when_fixed;          ///< at hand-over
  std::vector<SeasonWidth> seasons;    ///< empty without a room
  std::optional<wood::Season> year;    ///< the driest and dampest month, cut to the range in which the coefficients hold
  bool beyond_range = false;           ///< they were cut
  std::optional<wood::Play> at_edges;  ///< play needed at the edges when the middle is fixed
  std::vector<FixingCheck> fixings;
};

struct WoodPart {
  std::size_t piece = 0, part = 0;  ///< indices into the order
  std::string name;                 ///< "table / top"
  std::string skipped;              ///< why there is nothing to say: plywood; else empty
  WoodReady ready;
  std::optional<WoodBoard> board;
};

struct WoodMark {
  std::string name;  ///< "in a month"
  Instant at;
};

struct WoodFindings {
  std::vector<WoodPart> parts;  ///< those of wood, in the order's order
  std::string room;             ///< the room's air in words; empty: none is stated
  Instant moves_in, until;      ///< the room's air begins, and is followed until
  std::vector<WoodMark> marks;
  std::vector<std::string> films;  ///< "water clear: no data, taken as acrylic latex house primer paint, the nearest class"
  long hours_beyond_table = 0;     ///< of the air that is followed: where the table of equilibria was not seen to hold
};

}  // namespace coatday::job
