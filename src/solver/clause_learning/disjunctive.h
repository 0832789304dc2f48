#pragma once
// Tasks that may not overlap. Together they must fit between their bounds. A task that cannot end before the last of some others comes
// after all of them (edge finding).

#include "solver/clause_learning/engine.h"
#include "solver/clause_learning/theta_lambda_tree.h"

namespace coatday::solver::clause_learning {

struct Task {
  Var start = 0;
  Time length = 0;  ///< at least
};

class Disjunctive final : public Propagator {
 public:
  explicit Disjunctive(std::vector<Task> tasks);
  [[nodiscard]] std::vector<Engine::Wake> wakes() const;
  bool propagate(Trail&) override;

 private:
  bool find_edges(Trail&);
  void mirror();
  void read(const Trail&);
  // About the set of the first `count` tasks in order of their ends. All of them end by `by`.
  bool overload(Trail&, int count, Time by);
  bool come_after(Trail&, int task, int count, Time by);
  void confine(int count, int first_place, Time from, Time by);

  // In mirrored time a task starts at minus its end.
  [[nodiscard]] Literal starts_from(int task, Time t) const;
  [[nodiscard]] Literal ends_by(int task, Time t) const;

  std::vector<Task> tasks_;
  int idle_ = 0, rest_ = 0;  ///< runs without a find, halved by each find; and runs to skip
  bool mirrored_ = false;
  std::vector<Time> earliest_, latest_end_;
  std::vector<int> by_start_, by_end_;  ///< tasks, sorted
  std::vector<int> place_;              ///< by task: its place in by_start_
  std::vector<ThetaLambdaTree::Work> work_;
  ThetaLambdaTree tree_;
  std::vector<Literal> reason_;
};

}  // namespace coatday::solver::clause_learning
