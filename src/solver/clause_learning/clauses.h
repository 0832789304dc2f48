#pragma once
// Clauses over bounds. Each watches two of its literals.

#include <span>
#include <vector>

#include "solver/clause_learning/trail.h"

namespace coatday::solver::clause_learning {

/// No clause has two literals on one bound variable.
class Clauses {
 public:
  using Ref = std::uint32_t;

  void grow(int variables) { watches_.resize(at(2 * variables)); }
  /// Adds a clause of two or more literals and watches the first two. In a learned clause these are the literal that it sets, and the other
  /// literal that failed last.
  Ref add(std::span<const Literal>, bool learned, int block_distance = 0);
  /// Sets what follows from an entry of the trail. False on a conflict.
  bool propagate(Trail&, const Entry&);
  [[nodiscard]] std::span<const Literal> operator[](Ref ref) const { return {literals_.data() + clauses_[ref].begin, clauses_[ref].size}; }

  void bump(Ref);
  void decay() { step_ /= 0.999F; }
  [[nodiscard]] std::size_t learned() const { return learned_; }
  /// Removes clauses that hold at the root, and the less useful half of the learned ones. Only at the root, with nothing left to propagate.
  void reduce(const Trail&);

 private:
  struct Clause {
    std::uint32_t begin, size;
    int block_distance;  ///< the number of decision levels in it: the fewer, the more useful
    float activity;
    bool learned;
  };
  struct Watch {
    Time reached;  ///< the watched literal fails when the bound variable reaches this value
    Ref clause;
    Literal blocker;
  };
  void watch(Literal, Ref, Literal blocker);
  [[nodiscard]] std::vector<char> useless() const;

  std::vector<Literal> literals_;
  std::vector<Clause> clauses_;
  std::vector<std::vector<Watch>> watches_;  ///< by bound variable
  std::size_t learned_ = 0;
  float step_ = 1;
};

}  // namespace coatday::solver::clause_learning
