#pragma once
// Instants on the planner's grid of five minutes, and back.

#include <algorithm>
#include <chrono>

#include "quantity/time.h"
#include "solver/base/monotone.h"

namespace coatday::plan {

inline constexpr Minutes grid_step{5};

class Grid {
 public:
  /// Step 0 is the first whole step at or after `origin`.
  explicit Grid(Instant origin) : origin_(std::chrono::ceil<Step>(origin)) {}

  [[nodiscard]] Instant instant(solver::Time t) const { return Instant(origin_ + t * Step(1)); }
  [[nodiscard]] solver::Time down(Instant t) const { return static_cast<solver::Time>((std::chrono::floor<Step>(t) - origin_).count()); }
  [[nodiscard]] solver::Time up(Instant t) const { return static_cast<solver::Time>((std::chrono::ceil<Step>(t) - origin_).count()); }
  /// A span in steps, rounded up; beyond 100 years as 100 years.
  [[nodiscard]] static solver::Time steps(Hours h) {
    constexpr Hours longest = std::chrono::hours(100 * 366 * 24);
    return static_cast<solver::Time>(std::chrono::ceil<Step>(std::clamp(h, -longest, longest)).count());
  }

 private:
  using Step = std::chrono::duration<std::int64_t, std::ratio<300>>;
  std::chrono::time_point<std::chrono::system_clock, Step> origin_;
};

/// A hands-on time on the grid: rounded up, and never nothing.
[[nodiscard]] inline Minutes on_grid(Hours h) { return std::max(Grid::steps(h), solver::Time(1)) * grid_step; }

}  // namespace coatday::plan
