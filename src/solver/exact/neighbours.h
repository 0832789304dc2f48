#pragma once
// Parts of a schedule to search again while the rest keeps its order.

#include <vector>

#include "solver/base/network.h"
#include "solver/clause_learning/search.h"
#include "solver/heuristic/priority.h"

namespace coatday::solver {

class Neighbours {
 public:
  Neighbours(const Network&, Random&);

  /// Frees about `size` activities: at random by a stretch of time, by lags or by a resource.
  [[nodiscard]] Neighbourhood choose(const Schedule&, int size);
  /// For a first schedule: runs the activities of each cycle of lags as one group, group after group. Each group is then a small problem.
  /// Franck, Neumann and Schwindt, "Truncated branch-and-bound, schedule-construction, and schedule-improvement procedures for
  /// resource-constrained project scheduling", OR Spektrum 23 (2001), also schedule such groups before the rest.
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
