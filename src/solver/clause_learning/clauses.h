#pragma once
// Clauses over bounds, two of their literals watched.

#include <span>
#include <vector>

#include "solver/clause_learning/trail.h"

namespace coatday::solver::clause_learning {

/// No clause holds two literals of one bound variable.
class Clauses {
 public:
  using Ref = std::uint32_t;

  void grow(int variables) { watches_.resize(at(2 * variables)); }
  /// Of two literals or more. The first two are watched: of a learned one, the literal it sets and the one that failed last.
  Ref add(std::span<const Literal>, bool learned, int block_distance = 0);
  /// What follows from an entry of the trail; false on a conflict.
  bool propagate(Trail&, const Entry&);
  [[nodiscard]] std::span<const Literal> operator[](Ref ref) const { return {literals_.data() + clauses_[ref].begin, clauses_[ref].size}; }

  void bump(Ref);
  void decay() { step_ /= 0.999F; }
  [[nodiscard]] std::size_t learned() const { return learned_; }
  /// Drops what holds at the root and the less useful half of what was learned. Only at the root, with nothing left to propagate.
  void reduce(const Trail&);

 private:
  struct Clause {
    std::uint32_t begin, size;
    int block_distance;  ///< of the decisions that it spans: the fewer, the more useful
    float activity;
    bool learned;
  };
  struct Watch {
    Time reached;  ///< the watched literal fails when the side gets there
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
