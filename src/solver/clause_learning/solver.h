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
  /// To find a schedule, it helps to start again from the earliest starts now and then. To prove, only activity in conflicts counts.
  enum class Aim { find, prove };
  /// Looks for a schedule in which the assumptions hold. Leaves the engine at the root.
  Answer solve(const std::vector<Literal>& assumptions, Aim, long conflicts, const std::function<bool()>& stop);

  Model model;
  Branching branching;
  [[nodiscard]] const Schedule& schedule() const { return schedule_; }
  [[nodiscard]] bool dead() const { return dead_; }  ///< no schedule exists, whatever is assumed
  [[nodiscard]] long conflicts() const { return conflicts_; }
  void require(Literal);  ///< at the root
  /// At the root: tries both answers of each order, within so many moves of bounds, and fixes an order if one answer fails at once.
  void probe(long moves, const std::function<bool()>& stop);
  /// For checks: receives each learned clause before the solver uses it, also the empty one.
  std::function<void(const std::vector<Literal>&)> on_learned;
  /// For checks: receives assumptions that contradict what holds.
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
  std::size_t much_ = 4000;  ///< learned clauses before the next reduction
  Branching::Rule rule_ = Branching::Rule::earliest;
};

}  // namespace coatday::solver::clause_learning
