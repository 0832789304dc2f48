#pragma once
// From a problem to a schedule.

#include <cstdint>
#include <string>
#include <variant>

#include "solver/problem.h"

namespace coatday::solver {

struct Limits {
  int passes = 40;                     ///< constructive passes with perturbed priorities after the first one that succeeds
  int unscheduling_per_activity = 60;  ///< patience of one pass
  std::uint64_t seed = 1;
};

struct Found {
  Schedule schedule;
  Score score;
};

/// No schedule exists: these tags contradict each other, and no smaller set of them was found to. In the order of the reasoning.
struct Contradiction {
  std::vector<Tag> tags;
  int activity = -1;  ///< where the bounds crossed
};

/// No schedule was found, and none was proven impossible.
struct NotFound {
  int activity = -1;          ///< the one that most often found no place
  std::vector<Tag> blockers;  ///< what most often stood in its way
};

using Outcome = std::variant<Found, Contradiction, NotFound>;

/// Serial schedule generation with unscheduling, then passes with perturbed priorities that keep the best. Deterministic: the same problem,
/// limits and seed give the same schedule on any machine.
[[nodiscard]] Outcome solve(const Problem&, const Limits& = {});

/// A proven lower bound on Score::ready: bounds consistency over starts, lags and calendars, then work against capacity. Maximum lags that
/// have a remedy count for nothing. `never` where even that is impossible.
[[nodiscard]] Time ready_bound(const Problem&);

/// Every requirement that a schedule breaks, in words that name activities and constraints by number; empty when it is sound.
/// Written apart from solve() and sharing nothing with it but the problem.
[[nodiscard]] std::vector<std::string> violations(const Problem&, const Schedule&);

}  // namespace coatday::solver
