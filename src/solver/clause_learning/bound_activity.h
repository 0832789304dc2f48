#pragma once
// Which bound to decide next: the one that took part in most of the recent conflicts.

#include <optional>
#include <unordered_map>
#include <vector>

#include "solver/clause_learning/trail.h"

namespace coatday::solver::clause_learning {

class BoundActivity {
 public:
  /// Raises the score of a literal and of its opposite.
  void bump(const Trail&, Literal);
  void decay() { step_ /= 0.95; }
  /// The open literal (x >= v) with the highest score.
  [[nodiscard]] std::optional<Literal> next(const Trail&);
  void back(int level);
  /// Forgets literals that have taken part in no conflict for long.
  void shrink();

 private:
  struct Atom {
    Literal literal;
    double score;
    int place;  ///< in the heap, or -1
  };
  struct Passed {
    int atom, level;
  };
  [[nodiscard]] bool above(int a, int b) const {
    const Atom &x = atoms_[at(a)], &y = atoms_[at(b)];
    return x.score != y.score ? x.score > y.score : a < b;
  }
  void insert(int atom);
  void rise(int place);
  void sink(int place);
  void put(int atom, int place);
  int pop();

  std::vector<Atom> atoms_;
  std::unordered_map<std::uint64_t, int> index_;
  std::vector<int> heap_;
  std::vector<Passed> passed_;  ///< no longer in the heap, and since which level
  double step_ = 1;
};

}  // namespace coatday::solver::clause_learning
