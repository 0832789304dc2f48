#pragma once
// Parts of a schedule to be done anew while the rest keeps its order.

#include <vector>

#include "solver/base/network.h"
#include "solver/clause_learning/search.h"
#include "solver/heuristic/priority.h"

namespace coatday::solver {

class Neighbours {
 public:
  Neighbours(const Network&, Random&);

  /// About `size` activities free, chosen at random by a stretch of time, by lags or by a resource.
  [[nodiscard]] Neighbourhood choose(const Schedule&, int size);
  /// Where there is no schedule yet: what cycles of lags tie together stays together, one such group after the other. Each is a small problem
  /// then. Franck, Neumann and Schwindt, "Truncated branch-and-bound, schedule-construction, and schedule-improvement procedures for
  /// resource-constrained project scheduling", OR Spektrum 23 (2001), schedule such groups ahead of the rest.
  [[nodiscard]] Neighbourhood in_turn() const;

 private:
  using Free = std::vector<char>;
  [[nodiscard]] Free by_time(const Schedule&, int size);
  [[nodiscard]] Free by_lags(const Schedule&, int size);
  [[nodiscard]] Free by_resource(const Schedule&, int size);
  void keep_branches(const Schedule&, const Free&, Neighbourhood&) const;
  void keep_orders(const Schedule&, const Free&, Neighbourhood&) const;

  const Network& network_;
  Random& random_;
};

}  // namespace coatday::solver
