#pragma once
// What a search may spend, and what it may come back with.

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

/// Without seconds and work it is a quick call: so many passes. With either, passes go on (and stronger bounds and searches with them) until
/// one of the two is used up, the best is proven, or it is told to stop.
struct Limits {
  int passes = 40;                     ///< constructive passes with perturbed priorities after the first one that succeeds
  int unscheduling_per_activity = 60;  ///< patience of one pass
  std::uint64_t seed = 1;
  double seconds = 0;  ///< by `clock`, a cut-off that makes the result depend on the machine; 0: none
  Clock clock = Clock::wall;
  long work = 0;                                  ///< passes and conflicts in all, the same on every machine; 0: none
  std::function<void(const Progress&)> progress;  ///< called on each better schedule or bound once there is a schedule; null: never
  const std::atomic<bool>* stop = nullptr;        ///< to be set from outside; null: never
};

struct Found {
  Schedule schedule;
  Score score;
  Time ready_bound = -unreachable;  ///< no schedule is ready before; -unreachable: none was worked out
  bool proven = false;              ///< no schedule has less lateness, nor among those with as little an earlier ready time
};

/// No schedule exists: these tags contradict each other, and no smaller set of them was found to. In the order of the reasoning.
struct Contradiction {
  std::vector<Tag> tags;
  int activity = -1;  ///< where the bounds crossed
};

/// No schedule was found, and none was proven impossible.
struct NotFound {
  int activity = -1;                ///< the one that most often found no place
  std::vector<Tag> blockers;        ///< what most often stood in its way
  Time ready_bound = -unreachable;  ///< no schedule is ready before
};

using Outcome = std::variant<Found, Contradiction, NotFound>;

}  // namespace coatday::solver
