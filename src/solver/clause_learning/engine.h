#pragma once
// Trail, arcs, clauses and propagators, run to their fixpoint.

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
  /// At the root only. Literals of one bound variable must not be repeated.
  void clause(std::vector<Literal>);
  /// With the sides that wake it, and what it is then told.
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
  /// Ends the building: what holds at the root. False where nothing does.
  bool begin();

  bool propagate();
  void leave_nothing_out();  ///< for checks, see Propagator
  void decide(Literal);
  void deepen();
  void back(int level);
  /// At the root, after propagating: drops what the root makes needless, and the less useful half of what was learned if there is much.
  void tidy(std::size_t much);
  /// The literals, all true before it, that make this true entry's literal so.
  void explain(int entry, Literal, std::vector<Literal>&) const;
  /// The true literals that the trail's conflict is made of.
  void explain_conflict(std::vector<Literal>&) const;
  /// For checks: told of each explanation, the entry and what it was asked for (of the trail's conflict: -1 and null) with the premises.
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
  std::vector<int> due_;                         ///< propagators to run
  std::vector<char> is_due_;
  int next_ = 0;  ///< the trail up to here has been propagated
  bool sound_ = true;
};

}  // namespace coatday::solver::clause_learning
