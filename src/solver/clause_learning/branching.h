#pragma once
// What to decide next.

#include "solver/clause_learning/bound_activity.h"
#include "solver/clause_learning/model.h"

namespace coatday::solver::clause_learning {

class Branching {
 public:
  explicit Branching(const Model& model);

  /// The earliest open start at its earliest, or what took part in recent conflicts as it was in the preferred schedule.
  enum class Rule { earliest, active };
  /// None when all that matters is fixed.
  [[nodiscard]] std::optional<Literal> next(Rule);
  void prefer(const Schedule&);
  BoundActivity activity;

 private:
  [[nodiscard]] std::optional<Literal> earliest() const;
  [[nodiscard]] bool may_run(int activity) const;
  [[nodiscard]] std::optional<Literal> question_of(int activity) const;
  [[nodiscard]] std::optional<Literal> any_open() const;

  const Model& model_;
  std::vector<std::vector<Var>> questions_;  ///< by activity: to be answered with its start
  std::vector<Time> preferred_;              ///< by variable
};

}  // namespace coatday::solver::clause_learning
