#pragma once
// Who is in the room when. Of schedules that are equally good, one with fewer visits is better.

#include <vector>

#include "solver/base/monotone_function.h"

namespace coatday::solver {

struct Interval {  ///< [begin, end)
  Time begin = 0;
  Time end = 0;
};
using Intervals = std::vector<Interval>;  ///< sorted, disjoint, not touching

/// What an activity means to those who come for it.
struct Hands {
  bool on = false;           ///< somebody's hands are on it, in working time
  bool counts = false;       ///< it makes a visit; else somebody is there anyway
  bool soon = false;         ///< the sooner the better
  Time trails = 0;           ///< people stay so long after its end: they wipe down
  bool before_next = false;  ///< it best goes right before what waits for it
};

/// Hands are on an activity within [start, end) and the working time. Two such stretches are of one visit when they lie on the same day, and at
/// most `gap` of working time lies between. A visit with less than `shortest` of work is a lone errand.
struct Presence {
  Intervals open;            ///< working time
  std::vector<Time> days;    ///< the first moment of each day, sorted
  std::vector<Time> halves;  ///< the same for half days
  Time gap = 0, shortest = 0;
  std::vector<Hands> hands;  ///< by activity
};

}  // namespace coatday::solver
