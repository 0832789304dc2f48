#pragma once
// The passes of solve(): each rule as it is, then varied, then variations of the best schedule found.

#include <optional>

#include "solver/heuristic/incumbent.h"
#include "solver/heuristic/pass.h"
#include "solver/heuristic/priority.h"

namespace coatday::solver {

class Improvement {
 public:
  Improvement(const Network&, const Bounds&, Budget&, Incumbent&);
  /// Passes until there is a schedule; then for the rest of the limits. Each also ends with the budget's share or after so many passes, and may
  /// be called again.
  void find(int most = unreachable);
  void improve(int most = unreachable);
  [[nodiscard]] const FailureCounts& failure_counts() const { return failure_counts_; }

 private:
  enum class Rule { by_urgency, by_job, in_time, in_turn };
  [[nodiscard]] bool may_go_on(int pass, int most) const;
  PassSettings settings(int pass);
  [[nodiscard]] int passes() const;
  [[nodiscard]] bool many_jobs() const;
  [[nodiscard]] Rule plain_rule(int pass) const;
  Rule any_rule();
  PassSettings by_rule(int pass);
  PassSettings by_best();
  void vary_turns(PassSettings&);
  void shake(Keys&, double by);
  void shake_window(Keys&);
  void move_jobs(Keys&);
  void try_once(PassSettings);
  void justify(PassSettings, Schedule);
  std::optional<Schedule> pass(const PassSettings&);
  void remember(const Schedule&, const PassSettings&);
  [[nodiscard]] bool unbeatable() const;

  const Network& network_;
  const Bounds& bounds_;
  Budget& budget_;
  Incumbent& incumbent_;
  Random random_;
  Keys urgency_;
  std::vector<int> job_;
  int job_count_ = 0;
  double breadth_ = 1;  ///< of the urgencies
  Keys boost_;          ///< how often a pass was given up at the activity
  FailureCounts failure_counts_;
  PassSettings best_settings_;  ///< of the best schedule, its starts as keys
  Score remembered_;            ///< its score
  double spread_ = 1;           ///< of its starts
  int tried_ = 0;               ///< passes for a first schedule
  int since_proven_ = 0;        ///< passes
};

}  // namespace coatday::solver
