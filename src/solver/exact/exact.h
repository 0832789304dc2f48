#pragma once
// The exact search within a call's limits: on the whole problem, and on parts of the best schedule while the rest keeps its order.

#include "solver/base/bounds.h"
#include "solver/clause_learning/search.h"
#include "solver/exact/neighbours.h"
#include "solver/heuristic/budget.h"
#include "solver/heuristic/incumbent.h"

namespace coatday::solver {

class Exact {
 public:
  /// Whether building the search takes only a small part of the limits. It takes longer with more lags and longer ranges of starts.
  [[nodiscard]] static bool light(const Problem&, const Bounds&, const Incumbent&, const Limits&);

  /// The bounds must hold for every schedule.
  Exact(const Network&, const Bounds&, Budget&, Incumbent&);

  /// Spends so many conflicts on the whole problem. False: nothing is left to find.
  bool whole(long conflicts);
  /// Spends so many conflicts on a first schedule in which activities on cycles of lags run group by group.
  void in_turn(long conflicts);
  /// Searches so many neighbourhoods of the best schedule. There must be one. Returns whether any of them improved it.
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
  double size_ = 20;  ///< of a neighbourhood: grows if the search exhausts it, shrinks if not
  bool infeasible_ = false;
  bool astray_ = false;  ///< a schedule could not be laid out, so the search proves no more about the whole
};

}  // namespace coatday::solver
