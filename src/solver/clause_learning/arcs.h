#pragma once
// Lags between variables, y >= f(x) or y <= f(x) with f nondecreasing, as arcs from bound to bound. Some arcs hold only under conditions.
// If arcs with constant lags form a cycle that raises a bound for ever, their conditions contradict each other, whatever the bounds are.

#include <vector>

#include "solver/clause_learning/trail.h"

namespace coatday::solver::clause_learning {

/// A nondecreasing function over the values that a variable can have.
class Mapping {
 public:
  Mapping() = default;  ///< the identity
  Mapping(Function f, Time low, Time high);
  [[nodiscard]] bool constant() const { return !f_; }  ///< x + lag()
  [[nodiscard]] Time lag() const { return lag_; }
  [[nodiscard]] Time at(Time t) const { return f_ ? f_->at(t) : t + lag_; }
  /// The latest t with at(t) <= value. Below all values of the variable if there is none.
  [[nodiscard]] Time latest(Time value) const { return f_ ? f_->latest(value, low_, high_) : value - lag_; }

 private:
  Function f_;
  Time lag_ = 0, low_ = 0, high_ = 0;
};

using Conditions = std::vector<Literal>;

class Arcs {
 public:
  /// y >= f(x), or y <= f(x), while all conditions hold.
  void minimum(Var x, const Mapping&, Var y, Conditions = {});
  void maximum(Var x, const Mapping&, Var y, Conditions = {});
  void grow(int variables) {
    out_.resize(at(2 * variables));
    conditioned_.resize(at(2 * variables));
  }

  bool propagate(Trail&, BoundVar moved);
  /// Follows every arc once. False on a conflict.
  bool propagate_all(Trail&);
  /// At the root: removes the arcs with a condition that fails there, and the conditions that hold there.
  void tidy(const Trail&);
  /// Why the arc made the literal true, by the weakest premises.
  void explain(std::uint32_t arc, Literal, std::vector<Literal>&) const;

 private:
  enum class Kind : std::uint8_t { constant, minimum_ahead, minimum_back, maximum_ahead, maximum_back };
  struct Arc {
    BoundVar from, to;
    Time lag;
    Kind kind;
    int mapping, conditions;  ///< -1: none
    Literal first_condition;
  };
  void add(BoundVar from, BoundVar to, const Mapping&, Kind, int conditions);
  bool follow(Trail&, std::uint32_t arc) const;
  bool follow_conditioned(Trail&, std::uint32_t arc, Literal implied) const;
  bool move(Trail&, std::uint32_t arc, Literal implied) const;
  [[nodiscard]] std::vector<std::uint32_t> growing_cycle(const Trail&, std::uint32_t arc, Literal implied) const;
  [[nodiscard]] Time image(const Arc&, Time) const;
  [[nodiscard]] Time preimage(const Arc&, Time) const;

  std::vector<Arc> arcs_;
  std::vector<Mapping> mappings_;
  std::vector<Conditions> conditions_;
  std::vector<std::vector<std::uint32_t>> out_, conditioned_;  ///< by bound variable: arcs that start at it, or have a condition on it
};

}  // namespace coatday::solver::clause_learning
