#pragma once
// Work against capacity: the work that must lie within a stretch of time must fit into it.

#include <vector>

#include "solver/base/bounds.h"
#include "solver/lower_bounds/open_time.h"

namespace coatday::solver {

/// The run of an activity, or a hold that begins with it: its least length and its amount.
struct Job {
  int activity = 0;
  Time length = 0;
  int amount = 0;
  bool hold = false;
};

/// Jobs that share a capacity.
struct Load {
  int capacity = 0;
  OpenTime open_time;
  std::vector<Job> jobs;
};

class Workload {
 public:
  /// Takes every resource, and every pool of resources between which holds may choose. `runs` comes from shortest_runs() and must outlive
  /// it.
  Workload(const Network&, const Bounds&, const std::vector<Time>& runs, bool thorough);
  /// Adds activities that may only run one at a time.
  void add_clique(const Bounds&, const std::vector<int>& members);
  /// Whether some load does not fit within these bounds.
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
