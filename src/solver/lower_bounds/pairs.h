#pragma once
// Pairs of activities that may not run at the same time: one goes before the other.

#include <optional>
#include <vector>

#include "solver/base/bounds.h"
#include "solver/base/distance_matrix.h"

namespace coatday::solver {

class Pairs {
 public:
  /// With distances, lags decide orders too, and each decided order goes into the distances. `runs` comes from shortest_runs(). Looks at no
  /// more than `most` pairs.
  Pairs(const Network&, const Bounds&, const std::vector<Time>& runs, std::optional<DistanceMatrix>, std::size_t most);

  /// Tightens propagated bounds by all orders that the bounds or lags decide, within so much work. False if a pair has no order left.
  [[nodiscard]] bool tighten(Bounds&, long most_work) const;
  /// Sets of activities that may only run one at a time. None of the sets is part of another; long sets come first.
  [[nodiscard]] std::vector<std::vector<int>> cliques() const;

 private:
  struct Pair {
    int a = 0, b = 0;
    bool ab = true, ba = true;  ///< whether a may go before b, and b before a
  };
  void find_pairs(const Bounds&, std::size_t most);
  [[nodiscard]] bool exclude_each_other(int a, int b) const;
  void decide();
  [[nodiscard]] bool sweep(Bounds&, bool& changed) const;

  const Network& network_;
  std::optional<DistanceMatrix> distances_;
  std::vector<Time> run_;  ///< by activity, the shortest; 0: it may overlap anything
  std::vector<Pair> pairs_;
  bool possible_ = true;
};

}  // namespace coatday::solver
