#pragma once
// Takes whole jobs out of a schedule and puts them back in another turn, so that what is late, or waits long, comes sooner.

#include "solver/heuristic/priority.h"
#include "solver/heuristic/rework.h"

namespace coatday::solver {

class Reinsertion {
 public:
  /// The schedule must be sound and laid out, and the problem must have no alternatives.
  Reinsertion(const Network&, const Bounds&, const Budget&, const Schedule&);
  /// So many tries, fewer where many in a row are in vain. Knows no clock. Gives the best schedule.
  [[nodiscard]] Schedule run(long tries);

 private:
  struct Job {
    std::vector<int> activities;  ///< those that can move
    std::vector<int> goals;
    Time begin = unreachable, end = -unreachable;
  };

  bool try_once();
  [[nodiscard]] double want(int goal) const;
  [[nodiscard]] int urgent_job();
  [[nodiscard]] std::vector<int> with_neighbours(int job);
  [[nodiscard]] std::vector<Wish> wishes(const std::vector<int>& jobs) const;
  void measure(Job&) const;
  [[nodiscard]] Score reached() const;

  const Network& network_;
  const Bounds& bounds_;
  Random random_;
  Keys urgency_;
  std::vector<int> job_of_;
  std::vector<Job> jobs_;
  Rework work_;
  Score score_;
};

}  // namespace coatday::solver
