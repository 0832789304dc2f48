#pragma once
// What would help when nothing fits, or when the promise cannot be kept: the smallest change of each kind, else two of them together, found by planning anew.

#include "plan/compare.h"
#include "plan/planner.h"

namespace coatday::plan {

/// Changes under which the whole order is in time, the smallest of each kind, what asks least first (a scuff, warmer nights, warmer or drier air,
/// another drying place, hands for two hours or for good, a day more a week, a later start, a later date); where no single one suffices, pairs;
/// where those do not either, what helps. Every one rests on a plan that the checker found sound. Nothing for a plan that is in time, for one
/// that judge() refuses, or for an order too large to be planned again and again.
[[nodiscard]] std::vector<std::string> propose(const Job&, const Request&, const Plan&);

/// One change, and when everything may be delivered then.
struct Help {
  std::string words;
  Instant start;                ///< of the plan with the change
  Instant ready;                ///< by the late side
  Hours sooner{0};              ///< than without the change
  Hours waits_less{0};          ///< hours in which nobody is at work on it, fewer than without the change
  bool air = false;             ///< the change is one of the shop's air
  std::vector<BuyChange> buys;  ///< what the shopping list has otherwise
  std::optional<Money> dearer;  ///< so much more it costs; none: not known
  std::optional<Heat> heat;     ///< so much more the heater uses until both are ready; none: not known
};
/// What would make a plan ready sooner that waits for the shop's air.
struct Advice {
  bool too_large = false;  ///< to be planned again and again: nothing was tried
  std::optional<Hours>
      waits_for_air;  ///< so much sooner it would be ready in good air at all hours, or in the best air of the helps; of one of a
                      ///< kind that alone, where there is one; none: not known
  std::optional<Instant> searched;  ///< ready by a longer search alone, where that is sooner; the helps are against this
  std::vector<Help> helps;          ///< what helps most first; one of a kind
};

/// How much is tried: the largest change of each kind, or all sizes of each, with a search that makes a small order's plans comparable.
enum class Tries { one_of_a_kind, all };

/// A plan waits for air where it would be ready half a day sooner in good air at all hours: 23 °C or warmer and 30 to 50 % RH. For such a plan: the
/// single change of each kind (warmer nights, warmer or drier air, another product of the same role, a later start after which it is ready no later
/// and waits less) that makes it ready soonest; of those within an hour the smallest. Of one of a kind only what gains half a day. Every help rests
/// on a plan that the checker found sound. At most forty plans, or as many small ones as take no longer than people wait at once; none for a plan
/// that is none, nor for an order too large for so many.
[[nodiscard]] Advice advise(const Job&, const Request&, const Plan&, Tries);

/// Half a day: less is no reason to change anything (judgement).
inline constexpr Hours noticeable{12};

}  // namespace coatday::plan
