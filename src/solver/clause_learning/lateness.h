#pragma once
// The weighted sum of lateness.

#include "solver/clause_learning/engine.h"

namespace coatday::solver::clause_learning {

struct Promise {
  Var start = 0;
  Time due = 0;
  Time weight = 1;   ///< units of lateness for each step of time
  Var present = -1;  ///< -1: always
};

/// total >= the sum of weight * max(0, start - due) over the promises that take part.
class Lateness final : public Propagator {
 public:
  Lateness(Var total, std::vector<Promise> promises) : total_(total), promises_(std::move(promises)) {}
  [[nodiscard]] std::vector<Engine::Wake> wakes() const;
  bool propagate(Trail&) override;

 private:
  [[nodiscard]] static std::int64_t late(const Trail&, const Promise&);
  void because(const Trail&, const Promise* without, std::int64_t spare);

  Var total_;
  std::vector<Promise> promises_;
  std::vector<Literal> reason_;
};

}  // namespace coatday::solver::clause_learning
