#pragma once
// Keeps a variable within intervals while conditions hold.

#include "solver/clause_learning/arcs.h"
#include "solver/clause_learning/engine.h"

namespace coatday::solver::clause_learning {

class DomainPropagator final : public Propagator {
 public:
  /// The intervals must outlive it.
  DomainPropagator(Var x, const Intervals* allowed, Conditions conditions) : x_(x), allowed_(allowed), conditions_(std::move(conditions)) {}
  [[nodiscard]] std::vector<Engine::Wake> wakes() const;
  bool propagate(Trail&) override;

 private:
  bool squeeze(Trail&) const;
  bool refuse(Trail&, Literal open) const;

  Var x_;
  const Intervals* allowed_;
  Conditions conditions_;
};

}  // namespace coatday::solver::clause_learning
