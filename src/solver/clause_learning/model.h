#pragma once
// A problem in the engine's terms: every requirement of problem.h, exactly.

#include "solver/clause_learning/model_goals.h"
#include "solver/clause_learning/model_orders.h"
#include "solver/clause_learning/model_variables.h"

namespace coatday::solver::clause_learning {

class Model {
 public:
  explicit Model(const Problem&);

  Engine engine;
  [[nodiscard]] const Problem& problem() const { return variables_.problem; }
  [[nodiscard]] const Run& run(int activity) const { return variables_.run(activity); }
  [[nodiscard]] int runs() const { return variables_.runs(); }
  [[nodiscard]] Var choice(int hold, int index) const { return choices_[at(hold)][at(index)]; }  ///< -1: the only one
  [[nodiscard]] Var branch(int alternative, int index) const { return variables_.branches()[at(alternative)][at(index)]; }
  [[nodiscard]] const Objective& objective() const { return objective_; }
  [[nodiscard]] ModelOrders& orders() { return orders_; }
  [[nodiscard]] const ModelOrders& orders() const { return orders_; }

  /// The schedule of the trail. All variables must be fixed.
  [[nodiscard]] Schedule schedule() const;
  /// Writes the values that a schedule gives to variables. Leaves the other values as they are.
  void values(const Schedule&, std::vector<Time>&) const;

 private:
  ModelVariables variables_;
  ModelOrders orders_;
  std::vector<std::vector<Var>> choices_;  ///< by hold
  Objective objective_;
};

}  // namespace coatday::solver::clause_learning
