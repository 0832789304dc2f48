#pragma once
// Instants on the planner's grid of five minutes, and back.

#include <chrono>

#include "job/time_step.h"
#include "solver/base/monotone_function.h"

namespace coatday::planner {

class Grid {
 public:
  /// Step 0 is the first whole step at or after `origin`.
  explicit Grid(Instant origin) : origin_(std::chrono::ceil<Step>(origin)) {}

  [[nodiscard]] Instant instant(solver::Time t) const { return Instant(origin_ + t * Step(1)); }
  [[nodiscard]] solver::Time down(Instant t) const { return static_cast<solver::Time>((std::chrono::floor<Step>(t) - origin_).count()); }
  [[nodiscard]] solver::Time up(Instant t) const { return static_cast<solver::Time>((std::chrono::ceil<Step>(t) - origin_).count()); }
  /// A span in steps, rounded up.
  [[nodiscard]] static solver::Time steps(Hours h) { return static_cast<solver::Time>(job::whole_steps(h)); }
  /// The whole steps of a span that is a limit.
  [[nodiscard]] static solver::Time steps_within(Hours h) { return -steps(-h); }

 private:
  using Step = job::TimeStep;
  std::chrono::time_point<std::chrono::system_clock, Step> origin_;
};

}  // namespace coatday::planner
