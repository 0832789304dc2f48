#pragma once
// Conflict-driven search for one schedule under assumptions.

#include <chrono>

#include "solver/clause_learning/branching.h"
#include "solver/clause_learning/conflict_analysis.h"
#include "solver/clause_learning/search.h"

namespace coatday::solver::clause_learning {

class Solver {
 public:
  explicit Solver(const Problem&);

  enum class Answer { found, none, unknown };
  /// A schedule is found sooner with now and then a look from the earliest start on, a proof by what took part in conflicts alone.
  enum class Aim { find, prove };
  /// A schedule in which the assumptions hold; the engine is left at the root.
  Answer solve(const std::vector<Literal>& assumptions, Aim, long conflicts, const std::function<bool()>& stop);

  Model model;
  Branching branching;
  [[nodiscard]] const Schedule& schedule() const { return schedule_; }
  [[nodiscard]] bool dead() const { return dead_; }  ///< there is no schedule whatever is assumed
  [[nodiscard]] long conflicts() const { return conflicts_; }
  void require(Literal);  ///< at the root
  /// At the root: decides the orders of which one way contradicts all else at once, within so many moves of bounds.
  void probe(long moves, const std::function<bool()>& stop);
  /// For checks: told of each clause that it has come to hold, the empty one too, before it uses it.
  std::function<void(const std::vector<Literal>&)> on_learned;
  /// For checks: told of assumptions that it has found to contradict what holds.
  std::function<void(const std::vector<Literal>&)> on_refuted;

 private:
  void learn();
  long try_out(Literal);
  bool restart(Aim);
  std::optional<Answer> advance(const std::vector<Literal>& assumptions);

  ConflictAnalysis analysis_;
  Schedule schedule_;
  bool dead_ = false;
  long conflicts_ = 0;
  long next_restart_ = 0;
  int restarts_ = 0;
  std::size_t much_ = 4000;  ///< clauses
  Branching::Rule rule_ = Branching::Rule::earliest;
};

}  // namespace coatday::solver::clause_learning
