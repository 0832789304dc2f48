#pragma once
// The earliest times that sequence, waits and hours allow, as if no window closed and nobody were busy.

#include "planner/model/model.h"
#include "solver/base/bounds.h"

namespace coatday::planner {

class EarliestTimes {
 public:
  /// Uses all such requirements, or only those of these tags where all together contradict each other. The model must outlive it.
  EarliestTimes(const Model&, const std::vector<solver::Tag>&);

  /// When the wait of this tag is over, and when the window of this tag closes, if the step before it is as early as can be. Returns nothing
  /// where that is not known.
  [[nodiscard]] std::optional<solver::Time> after(solver::Tag) const;
  [[nodiscard]] std::optional<solver::Time> before(solver::Tag) const;
  /// release(): when the waits allow the task. start(): when its hours and air allow it, too.
  [[nodiscard]] std::optional<solver::Time> release(std::size_t task) const;
  [[nodiscard]] std::optional<solver::Time> start(std::size_t task) const;
  [[nodiscard]] std::optional<solver::Time> end(std::size_t task) const;

 private:
  [[nodiscard]] std::optional<solver::Time> value(const solver::Point&, const solver::Function&) const;
  [[nodiscard]] std::optional<solver::Time> sensible(solver::Time) const;

  const Model& model_;
  std::vector<solver::Tag> tags_;
  solver::Network network_;
  solver::Bounds bounds_;
  bool sound_ = true;
};

}  // namespace coatday::planner
