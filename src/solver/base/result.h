#pragma once
// What a search may spend, and what it returns.

#include <atomic>
#include <cstdint>
#include <functional>
#include <variant>
#include <vector>

#include "solver/base/score.h"
#include "solver/base/stopwatch.h"

namespace coatday::solver {

/// How far solve() has come.
struct Progress {
  Score best;            ///< of the best schedule so far
  Time ready_bound = 0;  ///< no schedule is ready before
  double seconds = 0;    ///< since the call
  bool proven = false;   ///< see Found
};

/// Without `seconds` and `work` the call is quick: it makes so many passes. With either, passes go on, with stronger bounds and searches,
/// until one of the two is used up, the best schedule is proven, or the caller sets `stop`.
struct Limits {
  int passes = 40;                     ///< passes with varied priorities after the first that finds a schedule
  int unscheduling_per_activity = 60;  ///< how often one pass takes activities out before it gives up
  std::uint64_t seed = 1;
  double seconds = 0;  ///< a limit on `clock`; the result then depends on the machine. 0: none
  Clock clock = Clock::wall;
  bool reasons = true;    ///< of a refusal that a search proved; without, it has no tags
  long reinsertions = 0;  ///< tries to put whole jobs back in another turn, where goals are late or wait their turn
  long work = 0;          ///< passes and conflicts in all, the same on every machine; 0: none
  double guard = 0;       ///< seconds on the processor; it only cuts off what work alone would end too late. 0: none
  std::function<void(const Progress&)> progress;  ///< called on each better schedule, then also on each better bound; null: never
  const std::atomic<bool>* stop = nullptr;        ///< the caller may set it at any time; null: never
};

struct Found {
  Schedule schedule;
  Score score;
  Time ready_bound = -unreachable;  ///< no schedule is ready before; -unreachable: no bound is known
  bool proven =
      false;  ///< no schedule has less lateness, or the same lateness and is ready earlier; where days are known, on an earlier day
  std::vector<Time> goals_from;  ///< by goal: no schedule reaches it before
  bool cut_off = false;          ///< by the guard
};

/// No schedule exists. These tags contradict each other, and the search found no smaller set that does. In the order of the reasoning.
/// No tags: a search proved it, and its reasons were not asked for.
struct Contradiction {
  std::vector<Tag> tags;
  int activity = -1;  ///< where the bounds crossed
};

/// No schedule was found, and none was proven impossible.
struct NotFound {
  int activity = -1;                ///< the activity that most often found no place
  std::vector<Tag> blockers;        ///< the tags that most often kept it from a place
  Time ready_bound = -unreachable;  ///< no schedule is ready before
};

using Outcome = std::variant<Found, Contradiction, NotFound>;

}  // namespace coatday::solver
