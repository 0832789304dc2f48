#pragma once
// How much of something is in use over time, as a step function.

#include <optional>

#include "solver/base/problem.h"

namespace coatday::solver {

class Profile {
 public:
  /// Adds amount (which may be negative) during [begin, end).
  void add(Time begin, Time end, int amount);
  void clear() { steps_.clear(); }

  /// The first, or last, stretch of [begin, end) with a use above `level`. The stretch is not cut at begin and end.
  [[nodiscard]] std::optional<Interval> first_above(int level, Time begin, Time end) const;
  [[nodiscard]] std::optional<Interval> last_above(int level, Time begin, Time end) const;

 private:
  struct Step {
    Time from;
    int level;
  };
  [[nodiscard]] std::size_t covering(Time t) const;  ///< one after the last step with from <= t
  std::size_t split(Time t);                         ///< the index of the step that begins at t; makes one if there is none
  void join(std::size_t index);                      ///< removes the step if it has the level of the step before

  std::vector<Step> steps_;  ///< sorted; the level before the first is 0, and neighbours differ
};

}  // namespace coatday::solver
