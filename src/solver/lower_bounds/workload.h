#pragma once
// Work against capacity: what must lie within a stretch of time may not be more than fits into it.

#include <vector>

#include "solver/base/bounds.h"
#include "solver/lower_bounds/open_time.h"

namespace coatday::solver {

/// An activity's run, or a hold that begins with it: at least so long, and so much of it.
struct Job {
  int activity = 0;
  Time length = 0;
  int amount = 0;
  bool hold = false;
};

/// What can be done only so much at a time, and what is to be done there.
struct Load {
  int capacity = 0;
  OpenTime open_time;
  std::vector<Job> jobs;
};

class Workload {
 public:
  /// Every resource, and resources together between which holds may choose. `runs`: see shortest_runs(); they must outlive it.
  Workload(const Network&, const Bounds&, const std::vector<Time>& runs, bool thorough);
  /// Activities no two of which may run at the same time.
  void add_clique(const Bounds&, const std::vector<int>& members);
  /// Whether within these bounds some load is more than fits.
  [[nodiscard]] bool too_much(const Bounds&) const;

 private:
  struct Window;
  void add_pools(const Bounds&);
  void add_load(const Bounds&, int capacity, std::vector<Job>);
  void add_runs(int resource, std::vector<Job>&) const;
  void add_hold(const Bounds&, const Hold&, std::vector<Job>&) const;
  [[nodiscard]] std::vector<Window> windows(const Bounds&, const Load&) const;
  [[nodiscard]] bool within_deadlines(const std::vector<Window>&, const Load&) const;
  [[nodiscard]] bool within_stretches(const std::vector<Window>&, const Load&) const;

  const Network& network_;
  const std::vector<Time>& run_;
  bool thorough_;
  std::vector<Load> loads_;
};

}  // namespace coatday::solver
