#pragma once
// The trail, arcs, clauses and propagators, run until nothing changes.

#include <functional>
#include <memory>
#include <span>
#include <vector>

#include "solver/clause_learning/arcs.h"
#include "solver/clause_learning/clauses.h"
#include "solver/clause_learning/propagator.h"

namespace coatday::solver::clause_learning {

class Engine {
 public:
  Trail trail;
  Clauses clauses;
  Arcs arcs;

  Var add(Time low, Time high, const Intervals* allowed = nullptr);
  Var ask() { return add(0, 1); }  ///< a yes-or-no question
  /// At the root only. No two literals may be on one bound variable.
  void clause(std::vector<Literal>);
  /// Which bound variables wake the propagator, and the item that it then receives.
  struct Wake {
    BoundVar bound_var;
    int item;
  };
  void add(std::unique_ptr<Propagator>, const std::vector<Wake>&);
  template <typename P>
  void add(std::unique_ptr<P> propagator) {
    const std::vector<Wake> wakes = propagator->wakes();
    add(std::move(propagator), wakes);
  }
  /// Ends the building: propagates at the root. False if no schedule exists.
  bool begin();

  bool propagate();
  void leave_nothing_out();  ///< for checks, see Propagator
  void decide(Literal);
  void deepen();
  void back(int level);
  /// At the root, after propagate(): removes what the root makes needless. If there are more learned clauses than `much`, also removes the
  /// less useful half.
  void tidy(std::size_t much);
  /// The earlier true literals that made the literal of this entry true.
  void explain(int entry, Literal, std::vector<Literal>&) const;
  /// The true literals that make up the trail's conflict.
  void explain_conflict(std::vector<Literal>&) const;
  /// For checks: receives each explanation, as the entry, the literal to explain and the premises. For the trail's conflict, -1 and null.
  std::function<void(int entry, const Literal* conclusion, std::span<const Literal> premises)> on_explained;

 private:
  void add_reason(Reason, Literal, std::vector<Literal>&) const;
  bool propagate_pending();
  void wake(BoundVar);

  struct Watching {
    int propagator, item;
  };
  std::vector<std::unique_ptr<Propagator>> propagators_;
  std::vector<std::vector<Watching>> watching_;  ///< by bound variable
  std::vector<int> due_;                         ///< propagators that must run
  std::vector<char> is_due_;
  int next_ = 0;  ///< the trail is propagated up to here
  bool sound_ = true;
};

}  // namespace coatday::solver::clause_learning
