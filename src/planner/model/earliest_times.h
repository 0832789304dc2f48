#pragma once
// What sequence, waits and hours leave by themselves, with no window that closes and nobody busy.

#include "planner/model/model.h"
#include "solver/base/bounds.h"

namespace coatday::planner {

class EarliestTimes {
 public:
  /// All such requirements where something can follow from them, else those of these tags alone. The model must outlive it.
  EarliestTimes(const Model&, const std::vector<solver::Tag>&);

  /// When the wait of this tag is over, and when the window of this tag closes, with what is before it at its earliest. Nothing where they do
  /// not say, or nothing can be said.
  [[nodiscard]] std::optional<solver::Time> after(solver::Tag) const;
  [[nodiscard]] std::optional<solver::Time> before(solver::Tag) const;
  /// When the task may start by the waits, and when by its hours and air too.
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
