#pragma once
// A constraint that runs when arcs and clauses conclude nothing more.

#include "solver/clause_learning/trail.h"

namespace coatday::solver::clause_learning {

class Propagator {
 public:
  Propagator() = default;
  Propagator(const Propagator&) = delete;
  Propagator& operator=(const Propagator&) = delete;
  virtual ~Propagator() = default;

  /// A bound variable that it watches has moved. `item` is what it asked to receive then.
  virtual void wake(int /*item*/) {}
  /// Concludes what follows from the moves since the last run. False on a conflict, which the trail then has.
  virtual bool propagate(Trail&) = 0;
  /// deepen(): a level begins. back(): the levels above `level` are undone, and with them all wakes since.
  virtual void deepen() {}
  virtual void back(int /*level*/) {}
  /// For checks: from now on it must conclude everything that its explanations allow.
  virtual void leave_nothing_out() {}
};

}  // namespace coatday::solver::clause_learning
