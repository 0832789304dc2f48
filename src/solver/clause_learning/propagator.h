#pragma once
// A constraint that runs when the arcs and clauses have nothing more to say.

#include "solver/clause_learning/trail.h"

namespace coatday::solver::clause_learning {

class Propagator {
 public:
  Propagator() = default;
  Propagator(const Propagator&) = delete;
  Propagator& operator=(const Propagator&) = delete;
  virtual ~Propagator() = default;

  /// A side that it watches has moved; `item` is what it was to be told then.
  virtual void wake(int /*item*/) {}
  /// Until it has nothing to say about what it was woken for; false on a conflict, which is then the trail's.
  virtual bool propagate(Trail&) = 0;
  /// A level begins; the levels above `level` are undone (and all that it was woken for since).
  virtual void deepen() {}
  virtual void back(int /*level*/) {}
  /// For checks: from now on it must conclude all that any of its explanations says.
  virtual void leave_nothing_out() {}
};

}  // namespace coatday::solver::clause_learning
