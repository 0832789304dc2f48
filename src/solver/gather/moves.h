#pragma once
// Changes that may save a visit.

#include "solver/gather/visit_count.h"
#include "solver/heuristic/keep_starts.h"
#include "solver/heuristic/priority.h"
#include "solver/heuristic/rework.h"

namespace coatday::solver {

class Moves {
 public:
  Moves(const Network& network, const Bounds& bounds, const Rework& work, const std::vector<Visit>& visits, Random& random)
      : network_(network), bounds_(bounds), work_(work), visits_(visits), random_(random), keeps_(has_kept_starts(network.problem)) {}

  /// Steps back to where they were kept, a whole visit to a neighbour, one step next to another step, or some visits a little earlier or later. Empty: nothing to move.
  [[nodiscard]] std::vector<Wish> any();
  /// Starts for an activity that best goes right before what waits for it, the best first.
  [[nodiscard]] std::vector<Time> before_next(int activity) const;

 private:
  [[nodiscard]] std::vector<Wish> back_to_kept();
  [[nodiscard]] std::vector<Wish> visit_to_neighbour();
  [[nodiscard]] std::vector<Wish> step_to_step();
  [[nodiscard]] std::vector<Wish> shifted();
  [[nodiscard]] int small_visit();
  /// Another visit, at most so far away; -1: none.
  [[nodiscard]] int neighbour(int visit, int most);
  [[nodiscard]] bool movable(int activity) const { return bounds_.earliest(activity) < bounds_.latest(activity); }

  const Network& network_;
  const Bounds& bounds_;
  const Rework& work_;
  const std::vector<Visit>& visits_;
  Random& random_;
  bool keeps_;
};

}  // namespace coatday::solver
