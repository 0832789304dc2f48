#pragma once
// The best schedule so far, and what bounds it.

#include <optional>

#include "solver/base/network.h"
#include "solver/heuristic/budget.h"

namespace coatday::solver {

class Incumbent {
 public:
  Incumbent(const Network& network, Budget& budget) : network_(network), budget_(budget) {}

  /// Takes the schedule if it is better and sound. Lays it out first if necessary. Returns whether it took it.
  bool offer(Schedule, const Score&);
  /// No schedule is ready earlier or has less lateness than this.
  void bound(Time ready, double lateness);
  /// By goal: no schedule reaches it before.
  void bound_goals(std::vector<Time> from);
  /// The exact search proved that nothing is better in lateness and ready time.
  void exhausted();

  [[nodiscard]] const std::optional<Found>& best() const { return best_; }
  [[nodiscard]] bool proven() const { return best_ && best_->proven; }
  [[nodiscard]] Time ready_bound() const { return ready_bound_; }
  [[nodiscard]] double lateness_bound() const { return lateness_bound_; }

 private:
  void judge();
  [[nodiscard]] bool same_day(Time earlier, Time later) const;
  void report() const;

  const Network& network_;
  Budget& budget_;
  std::optional<Found> best_;
  Time ready_bound_ = -unreachable;
  double lateness_bound_ = 0;
  std::vector<Time> goals_from_;
  bool exhausted_ = false;
};

}  // namespace coatday::solver
