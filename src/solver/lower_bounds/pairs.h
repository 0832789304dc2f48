#pragma once
// Two activities that may not run at the same time: one goes before the other.

#include <optional>
#include <vector>

#include "solver/base/bounds.h"
#include "solver/base/distance_matrix.h"

namespace coatday::solver {

class Pairs {
 public:
  /// With a separation, lags decide orders too, and what they decide is added to it. `runs`: see shortest_runs(); they must outlive it. No more
  /// than `most` pairs are looked at.
  Pairs(const Network&, const Bounds&, const std::vector<Time>& runs, std::optional<DistanceMatrix>, std::size_t most);

  /// Tightens propagated bounds by all orders that they or the lags decide, within so much of the bounds' work; false where some pair has none.
  [[nodiscard]] bool tighten(Bounds&, long most_work) const;
  /// Sets of activities no two of which may run at the same time, none of them within another; the longest together first.
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
  std::vector<Time> run_;  ///< by activity, the shortest; 0 where it may overlap anything
  std::vector<Pair> pairs_;
  bool possible_ = true;
};

}  // namespace coatday::solver
