#pragma once
// What would make a plan ready sooner, as data.

#include <optional>
#include <string>
#include <vector>

#include "job/compare.h"

namespace coatday::job {

/// A day: less is no reason to change anything (judgement).
inline constexpr Hours noticeable{24};

/// One change, and when everything may be delivered then.
struct Suggestion {
  std::string words;
  std::vector<std::string> set;  ///< the same as keys of the files, "drying places.rack.count=10" each; empty: no key says it
  Instant start;                 ///< of the plan with the change
  Instant ready;                 ///< by the slow clocks
  Hours sooner{0};               ///< than without the change
  bool air = false;              ///< the change is one of the shop's air
  std::vector<BuyChange> buys;   ///< what the shopping list has otherwise
  std::optional<Money> dearer;   ///< so much more it costs; none: not known
  std::optional<Heat> heat;      ///< so much more the heater uses until both are ready; none: not known
};
/// What would make a plan sooner that waits for the shop's air.
struct Advice {
  bool too_large = false;  ///< too large to plan again and again: nothing was tried
  bool cut_off = false;    ///< some changes would have taken too long to plan
  std::optional<Hours>
      waits_for_air;  ///< so much sooner it would be ready in good air at all hours, or in the best air of the suggestions; of one of a
                      ///< kind that alone, where there is one; none: not known
  std::optional<Instant> searched;      ///< ready by a longer search alone, where that is sooner; the suggestions are against this
  std::vector<Suggestion> suggestions;  ///< what it waits for most, first
};

}  // namespace coatday::job
