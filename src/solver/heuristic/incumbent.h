#pragma once
// The best schedule so far, and what is known to bound it.

#include <optional>

#include "solver/base/network.h"
#include "solver/heuristic/budget.h"

namespace coatday::solver {

class Incumbent {
 public:
  Incumbent(const Network& network, Budget& budget) : network_(network), budget_(budget) {}

  /// Takes the schedule if it is better and sound, laid out if it is not yet. Whether it did.
  bool offer(Schedule, const Score&);
  /// No schedule is ready before, none less late.
  void bound(Time ready, double lateness);
  /// The exact search found that nothing is better in lateness and ready time.
  void exhausted();

  [[nodiscard]] const std::optional<Found>& best() const { return best_; }
  [[nodiscard]] bool proven() const { return best_ && best_->proven; }
  [[nodiscard]] Time ready_bound() const { return ready_bound_; }
  [[nodiscard]] double lateness_bound() const { return lateness_bound_; }

 private:
  void judge();
  void report() const;

  const Network& network_;
  Budget& budget_;
  std::optional<Found> best_;
  Time ready_bound_ = -unreachable;
  double lateness_bound_ = 0;
  bool exhausted_ = false;
};

}  // namespace coatday::solver
