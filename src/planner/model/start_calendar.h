#pragma once
// When a task may start, and when it ends: working hours, and for a coat the air.

#include "planner/model/drying_clocks.h"
#include "solver/base/problem.h"

namespace coatday::planner {

class Calendar {
 public:
  /// Working time within [grid 0, horizon), and since `past`, which is before 0 where something is done.
  Calendar(const shop::Shop&, const Grid&, solver::Time past, solver::Time horizon);

  [[nodiscard]] const solver::Intervals& working() const { return working_; }
  [[nodiscard]] const solver::Intervals& past_and_coming() const { return past_and_coming_; }
  [[nodiscard]] solver::Time horizon() const { return horizon_; }
  /// Starts from which so many steps fit into one stretch of work.
  [[nodiscard]] solver::Intervals unbroken(solver::Time steps) const;
  /// Starts of work that pauses when the shop closes: any working moment with enough working time after it, and before `until`.
  [[nodiscard]] solver::Intervals pausing(solver::Time steps, solver::Time until) const;
  /// The end of pausing work as a function of its start.
  [[nodiscard]] solver::Function pausing_end(solver::Time steps) const;

 private:
  solver::Intervals working_, past_and_coming_;
  solver::Time horizon_;
};

/// When the air stays within the product's limits, also during the hold after the coat. A mixed product also needs air for which its mixing
/// was worked out.
[[nodiscard]] solver::Intervals air_allows(const finish::Product&, const Mixing*, const finish::Conditions&, const Grid&);

/// Starts of a stretch of so many steps within each interval.
[[nodiscard]] solver::Intervals starts_within(const solver::Intervals&, solver::Time steps);

[[nodiscard]] solver::Intervals intersection(const solver::Intervals&, const solver::Intervals&);
[[nodiscard]] solver::Intervals cut(const solver::Intervals&, solver::Time from, solver::Time until);

}  // namespace coatday::planner
