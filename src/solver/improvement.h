#pragma once
// The passes of solve(): each rule as it is, then varied, then variations of the best schedule found.

#include <optional>

#include "solver/construct.h"
#include "solver/priority.h"
#include "solver/solve.h"

namespace coatday::solver {

class Improvement {
 public:
  Improvement(const Network&, const Bounds&, const Limits&);
  Outcome run();

 private:
  Directions directions(int pass);
  Directions by_rule(int pass);
  Directions by_best();
  void shake(Keys&, double by);
  void shake_window(Keys&);
  void move_jobs(Keys&);
  void try_once(const Directions&);
  void remember(const Schedule&, const Directions&);
  [[nodiscard]] bool unbeatable() const;

  const Network& network_;
  const Bounds& bounds_;
  const Limits& limits_;
  Random random_;
  Keys urgency_;
  std::vector<int> job_;
  int job_count_ = 0;
  double breadth_ = 1;  ///< of the urgencies
  Keys boost_;          ///< how often a pass was given up at the activity
  Troubles troubles_;
  std::optional<Found> best_;
  Directions best_directions_;  ///< of the best schedule, its starts as keys
  double spread_ = 1;           ///< of its starts
};

}  // namespace coatday::solver
