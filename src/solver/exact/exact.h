#pragma once
// The exact search within a call's limits: on the whole problem, and on parts of the best schedule with the rest kept in order.

#include "solver/base/bounds.h"
#include "solver/clause_learning/search.h"
#include "solver/exact/neighbours.h"
#include "solver/heuristic/budget.h"
#include "solver/heuristic/incumbent.h"

namespace coatday::solver {

class Exact {
 public:
  /// Whether it is set up in a small part of the limits: that takes time by lags and by the length of what they may span.
  [[nodiscard]] static bool light(const Problem&, const Bounds&, const Incumbent&, const Limits&);

  /// The bounds are of every schedule.
  Exact(const Network&, const Bounds&, Budget&, Incumbent&);

  /// So many conflicts on the whole problem. False: nothing is left to find.
  bool whole(long conflicts);
  /// So many conflicts for a first schedule, in which what cycles of lags tie together is done in turn.
  void in_turn(long conflicts);
  /// So many neighbourhoods of the best schedule (there must be one). Whether any of them bettered it.
  bool parts(int count);
  [[nodiscard]] bool infeasible() const { return infeasible_; }
  [[nodiscard]] bool over() const { return infeasible_ || incumbent_.proven(); }

 private:
  [[nodiscard]] SearchLimits limits(long conflicts) const;
  void take(const SearchResult&);

  const Network& network_;
  Budget& budget_;
  Incumbent& incumbent_;
  Random random_;
  Neighbours neighbours_;
  Problem problem_;  ///< without what the bounds and the best schedule rule out
  Search search_;
  double size_ = 20;  ///< of a neighbourhood: grows while they are exhausted, shrinks while they are not
  bool infeasible_ = false;
  bool astray_ = false;  ///< it found a schedule that could not be laid out: it says no more of the whole
};

}  // namespace coatday::solver
