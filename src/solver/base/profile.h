#pragma once
// The use of something over time, as a step function.

#include <optional>

#include "solver/base/problem.h"

namespace coatday::solver {

class Profile {
 public:
  /// Adds amount (which may be negative) during [begin, end).
  void add(Time begin, Time end, int amount);
  void clear() { steps_.clear(); }

  /// The first (last) stretch of [begin, end) in which the use is above `level`; not cut at begin and end.
  [[nodiscard]] std::optional<Interval> first_above(int level, Time begin, Time end) const;
  [[nodiscard]] std::optional<Interval> last_above(int level, Time begin, Time end) const;

 private:
  struct Step {
    Time from;
    int level;
  };
  [[nodiscard]] std::size_t covering(Time t) const;  ///< one past the last step with from <= t
  std::size_t split(Time t);                         ///< the index of the step that begins at t, made if need be
  void join(std::size_t index);                      ///< drops the step if its level is that of the one before

  std::vector<Step> steps_;  ///< sorted; the level before the first is 0, and neighbours differ
};

}  // namespace coatday::solver
