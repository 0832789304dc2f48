#pragma once
// The least distance between starts, as plain numbers that hold for all tables and calendars.

#include <optional>

#include "solver/base/bounds.h"

namespace coatday::solver {

/// By activity, the least end(start) - start over the starts that the bounds allow; 0 for activities that may be left out.
[[nodiscard]] std::vector<Time> shortest_runs(const Network&, const Bounds&);
/// The least, or the greatest, bound(point) - start(point.activity) over the starts that the bounds allow. The first may be too small and
/// the second too large: a long range of starts is cut into about so many stretches.
[[nodiscard]] Time least_reach(const Network&, const Bounds&, const Point&, const Function& bound, int stretches);
[[nodiscard]] Time greatest_reach(const Network&, const Bounds&, const Point&, const Function& bound, int stretches);

/// start(b) - start(a) >= at(a, b), by the longest paths over hard lags between certain activities.
class DistanceMatrix {
 public:
  static constexpr Time unrelated = -unreachable;

  DistanceMatrix(const Network&, const Bounds&);
  [[nodiscard]] Time at(int a, int b) const { return paths_[index(a, b)]; }
  /// Adds start(b) - start(a) >= least. False where that closes a cycle that no schedule can meet.
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
