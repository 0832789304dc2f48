#pragma once
// What ends work that would take too long.

#include "solver/solve.h"

namespace coatday::planner {

/// A build under the sanitizers takes so many times as long, and has to find the same.
#if defined(__SANITIZE_ADDRESS__)
inline constexpr double slowness = 15;
#else
inline constexpr double slowness = 1;
#endif

/// So many seconds on the processor from now on. The load of other programs does not shorten them.
class Guard {
 public:
  explicit Guard(double seconds) : seconds_(seconds * slowness) {}
  [[nodiscard]] double left() const { return seconds_ - worked_.seconds(); }

 private:
  double seconds_;
  solver::Stopwatch worked_{solver::Clock::processor};
};

}  // namespace coatday::planner
