#pragma once
// What the search decides next.

#include "solver/clause_learning/bound_activity.h"
#include "solver/clause_learning/model.h"

namespace coatday::solver::clause_learning {

class Branching {
 public:
  explicit Branching(const Model& model);

  /// `earliest`: the open start that can come first, at its earliest. `active`: what took part in recent conflicts, as in the preferred
  /// schedule.
  enum class Rule { earliest, active };
  /// Returns nothing if everything that matters is fixed.
  [[nodiscard]] std::optional<Literal> next(Rule);
  void prefer(const Schedule&);
  BoundActivity activity;

 private:
  [[nodiscard]] std::optional<Literal> earliest() const;
  [[nodiscard]] bool may_run(int activity) const;
  [[nodiscard]] std::optional<Literal> question_of(int activity) const;
  [[nodiscard]] std::optional<Literal> any_open() const;

  const Model& model_;
  std::vector<std::vector<Var>> questions_;  ///< by activity: what must be decided before its start
  std::vector<Time> preferred_;              ///< by variable
};

}  // namespace coatday::solver::clause_learning
