#pragma once
// What would help when nothing fits, or when the promise cannot be kept: the smallest change of each kind, else two of them together, found by planning anew.

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
  Instant start;    ///< of the plan with the change
  Instant ready;    ///< by the late side
  Hours sooner{0};  ///< than the plan as it is
};
struct Advice {
  std::optional<Hours>
      waits_for_air;        ///< so much sooner it would be ready in reference air at all hours or with the best help; none: not known
  std::vector<Help> helps;  ///< what helps most first; one of a kind
};

/// A plan waits for air where it would be ready half a day sooner with 23 °C and 50 % RH at all hours. For such a plan: the single change of each
/// kind (warmer nights, warmer or drier air, another product of the same role, a later start with no later end) that makes it ready soonest;
/// of those within an hour the smallest. Every one rests on a plan that the checker found sound. At most forty plans; no help for a plan that is
/// none, and for an order too large to be planned again and again.
[[nodiscard]] Advice advise(const Job&, const Request&, const Plan&);

/// Half a day: less is no reason to change anything (judgement).
inline constexpr Hours noticeable{12};

}  // namespace coatday::plan
