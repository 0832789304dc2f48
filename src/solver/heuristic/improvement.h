#pragma once
// The passes of solve(): each rule alone, then each varied, then variations of the best schedule.

#include <optional>

#include "solver/heuristic/incumbent.h"
#include "solver/heuristic/pass.h"
#include "solver/heuristic/priority.h"

namespace coatday::solver {

class Improvement {
 public:
  Improvement(const Network&, const Bounds&, Budget&, Incumbent&);
  /// Passes until there is a schedule; with one, passes that look for a better one. Both stop when the budget's share is used up or after
  /// so many passes. Both may be called again.
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
  double breadth_ = 1;  ///< largest less smallest urgency
  Keys boost_;          ///< by activity: how often a pass gave up there
  FailureCounts failure_counts_;
  PassSettings best_settings_;  ///< of the best schedule, with its starts as keys
  Score remembered_;            ///< the score of that schedule
  double spread_ = 1;           ///< last less first of its starts
  int tried_ = 0;               ///< passes made for a first schedule
  int since_proven_ = 0;        ///< passes since the best was proven
};

}  // namespace coatday::solver
