#pragma once
// Parts of a schedule to be done anew while the rest keeps its order.

#include <vector>

#include "solver/learn/search.h"
#include "solver/network.h"
#include "solver/priority.h"

namespace coatday::solver {

class Neighbours {
 public:
  Neighbours(const Network&, Random&);

  /// About `size` activities free, chosen at random by a stretch of time, by lags or by a resource.
  [[nodiscard]] Neighbourhood choose(const Schedule&, int size);

 private:
  using Free = std::vector<char>;
  [[nodiscard]] Free by_time(const Schedule&, int size);
  [[nodiscard]] Free by_lags(const Schedule&, int size);
  [[nodiscard]] Free by_resource(const Schedule&, int size);
  void keep_ways(const Schedule&, const Free&, Neighbourhood&) const;
  void keep_orders(const Schedule&, const Free&, Neighbourhood&) const;

  const Network& network_;
  Random& random_;
};

}  // namespace coatday::solver
