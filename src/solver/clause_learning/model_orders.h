#pragma once
// Which of two activities goes first.

#include <map>
#include <utility>

#include "solver/clause_learning/disjunctive_set.h"
#include "solver/clause_learning/model_variables.h"

namespace coatday::solver::clause_learning {

/// A question: `yes` makes the first end before the second starts, `no` makes the second end before the first starts.
struct Order {
  Var x = -1;
  Var first = -1, second = -1;  ///< their starts
};

class ModelOrders {
 public:
  explicit ModelOrders(ModelVariables& model) : model_(model) {}

  /// Adds a question for each two tasks that may not overlap. A clause about their order says more than a clause about their starts.
  void add(const DisjunctiveSet&);
  [[nodiscard]] const std::vector<Order>& all() const { return orders_; }
  /// A literal that makes one activity end before the other starts. The same literal each time.
  Literal precedence(int before, int after);
  /// The questions that precedence() has added.
  [[nodiscard]] const std::map<std::pair<int, int>, Var>& precedences() const { return precedences_; }
  /// Whether a variable must be decided before there is a schedule.
  [[nodiscard]] bool matters(Var x) const { return at(x) >= idle_.size() || idle_[at(x)] == 0; }

 private:
  void add_order(const DisjunctiveSet&, std::size_t, std::size_t);
  Var ask_idly();

  ModelVariables& model_;
  std::vector<char> idle_;                           ///< by variable; those beyond its end matter
  std::vector<Order> orders_;                        ///< of those that may not overlap
  std::map<std::pair<Var, Var>, Literal> order_of_;  ///< by the starts of the first and of the second task
  std::map<std::pair<int, int>, Var> precedences_;   ///< the questions of precedence()
};

}  // namespace coatday::solver::clause_learning
