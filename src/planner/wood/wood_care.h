#pragma once
// What a job's wood asks of its plan: to be at rest before it is coated, and not to lie with one face coated for long.

#include <map>
#include <optional>
#include <string>
#include <utility>

#include "job/job.h"
#include "job/load_items.h"
#include "planner/wood/readiness.h"
#include "quantity/time.h"

namespace coatday::planner {

/// A part that was measured. It is coated only while it is at rest in the shop's air, which changes with the weather.
struct Rest {
  bool now = false;               ///< when the plan, or its order, begins
  std::optional<Instant> until;   ///< when it first is; nothing: not within a year
  std::vector<RestSpan> at_rest;  ///< while the plan looks ahead
  std::string why;                ///< "12 % moist, and the shop's air leads to 6.5 %: near enough"
  std::string note;               ///< what the meter is to say
};

/// One face coated, the other not yet.
struct OneFace {
  Hours longest{0};
  Metres cup;  ///< that it may reach then
};

struct WoodCare {
  using PartOfPiece = std::pair<std::size_t, std::size_t>;
  std::map<PartOfPiece, Rest> rests;
  using OneFaces =
      std::map<std::pair<PartOfPiece, std::string>, OneFace>;  ///< by the step's id, where it is less than the shop's own limit
  OneFaces one_face, one_face_begun;                           ///< of loads that are begun, and so need not be at rest
};

/// Of parts with readings, and of boards with a limit to their cup. Nothing, and no time spent, where the order has neither.
[[nodiscard]] WoodCare wood_care(const job::Job&, Instant from, Instant until);

/// Something is recorded of all these items of the piece: nobody asks any more whether their wood is at rest.
[[nodiscard]] bool is_begun(const job::Order&, const std::string& piece_id, const job::LoadItems&);

/// Why no plan can be: what never comes to rest in this shop.
[[nodiscard]] std::vector<std::string> never_at_rest(const job::Job&, const WoodCare&);

}  // namespace coatday::planner
