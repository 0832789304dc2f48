#pragma once
// A lower bound by refutation: the smallest ready time that lags, orders and work against capacity do not refute.

#include "solver/base/bounds.h"
#include "solver/lower_bounds/pairs.h"
#include "solver/lower_bounds/rounds.h"
#include "solver/lower_bounds/workload.h"

namespace coatday::solver {

class LowerBound {
 public:
  enum class Effort { quick, thorough };

  /// The bounds must be propagated and not crossed.
  LowerBound(const Network&, const Bounds&, Effort);

  [[nodiscard]] bool impossible() const { return impossible_; }
  /// No schedule is ready before. `unreachable` if no schedule exists, -unreachable if no goal is certain to take part.
  [[nodiscard]] Time ready() const;
  /// The bounds, tightened by the orders of pairs.
  [[nodiscard]] const Bounds& bounds() const { return bounds_; }

 private:
  [[nodiscard]] bool refuted(Time ready, long& work) const;

  const Network& network_;
  Bounds bounds_;
  std::vector<int> goals_;  ///< those that take part in every schedule
  std::vector<Time> runs_;
  Pairs pairs_;
  Workload workload_;
  Rounds rounds_;
  bool impossible_ = false;
};

}  // namespace coatday::solver
