#pragma once
// By how much starts lie apart at least, whenever they are: what tables and calendars leave of the lags as plain numbers.

#include <optional>

#include "solver/base/bounds.h"

namespace coatday::solver {

/// By activity, the least end(start) - start over the starts that the bounds leave; 0 for those that may take no part.
[[nodiscard]] std::vector<Time> shortest_runs(const Network&, const Bounds&);
/// The least bound(point) - start(point.activity), and the greatest, over the starts that the bounds leave; each may be further out than is so:
/// long windows are looked at in about so many stretches.
[[nodiscard]] Time least_reach(const Network&, const Bounds&, const Point&, const Function& bound, int stretches);
[[nodiscard]] Time greatest_reach(const Network&, const Bounds&, const Point&, const Function& bound, int stretches);

/// start(b) - start(a) >= at(a, b): the longest paths over hard lags between required activities.
class DistanceMatrix {
 public:
  static constexpr Time unrelated = -unreachable;

  DistanceMatrix(const Network&, const Bounds&);
  [[nodiscard]] Time at(int a, int b) const { return paths_[index(a, b)]; }
  /// Adds start(b) - start(a) >= least. False where that closes a cycle that cannot be.
  bool add(int a, int b, Time least);
  [[nodiscard]] bool consistent() const { return consistent_; }

 private:
  [[nodiscard]] std::size_t index(int a, int b) const { return solver::at(a) * size_ + solver::at(b); }
  void raise(int a, int b, Time least) { paths_[index(a, b)] = std::max(paths_[index(a, b)], least); }
  void close();

  std::size_t size_;
  std::vector<Time> paths_;
  bool consistent_ = true;
};

}  // namespace coatday::solver
