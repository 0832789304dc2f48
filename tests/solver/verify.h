#pragma once
// Everything that a search concludes, checked by propagation alone: an explanation by an engine that has learned nothing (one with a clause as
// its reason by an engine that has that clause), a learned clause and refuted assumptions by an engine with what was learned before. As those
// share their propagators with the search, a schedule may bear witness too: it must obey every explanation and every learned clause.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "solver/clause_learning/solver.h"

namespace coatday::solver::test {

/// A second model of the same problem, always left at its root.
class Fresh {
 public:
  explicit Fresh(const Problem&);

  /// So that the two number their variables alike; false where they cannot.
  [[nodiscard]] bool follow(const clause_learning::Model&);
  /// Whether propagation finds that the literals cannot all hold.
  [[nodiscard]] bool refutes(std::span<const clause_learning::Literal>);
  /// Whether propagation finds that the conclusion follows.
  [[nodiscard]] bool implies(std::span<const clause_learning::Literal> premises, clause_learning::Literal conclusion);
  void add(std::vector<clause_learning::Literal> clause);
  [[nodiscard]] bool dead() const { return dead_; }  ///< nothing holds at the root

 private:
  bool assume(std::span<const clause_learning::Literal>);

  clause_learning::Model model_;
  bool dead_ = false;
};

class Verifier {
 public:
  /// Checks all that the solver concludes from now on, while both live.
  Verifier(const Problem&, clause_learning::Solver&);
  void hear(const Schedule& witness);

  struct Tally {
    long explanations = 0, clauses = 0, refutations = 0;
  };
  [[nodiscard]] const Tally& tally() const { return tally_; }
  [[nodiscard]] const std::vector<std::string>& complaints() const { return complaints_; }
  [[nodiscard]] bool found_contradiction() const { return learned_.dead(); }

  // What it receives from the solver; a test may send something false.
  void explained(int entry, const clause_learning::Literal* conclusion, std::span<const clause_learning::Literal> premises);
  void learned(const std::vector<clause_learning::Literal>& clause);
  void refuted(const std::vector<clause_learning::Literal>& assumptions);

 private:
  void follow();
  /// Whether the witness says that none of them holds.
  [[nodiscard]] bool denied(std::span<const clause_learning::Literal> any) const;
  [[nodiscard]] bool by_clause(int entry) const;
  void complain(const std::string& what, std::span<const clause_learning::Literal>);

  const clause_learning::Solver& solver_;
  Fresh bare_, learned_;
  std::vector<Time> witness_;  ///< by variable, as far as it knows
  Tally tally_;
  std::vector<std::string> complaints_;
};

}  // namespace coatday::solver::test
