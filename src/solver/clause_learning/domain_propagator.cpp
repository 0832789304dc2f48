#include "solver/clause_learning/domain_propagator.h"

#include "solver/base/calendar.h"

namespace coatday::solver::clause_learning {

std::vector<Engine::Wake> DomainPropagator::wakes() const {
  std::vector<Engine::Wake> result{{2 * x_, 0}, {2 * x_ + 1, 0}};
  for (const Literal condition : conditions_) result.push_back({condition.bound_var, 0});
  return result;
}

bool DomainPropagator::propagate(Trail& trail) {
  const Literal* open = nullptr;
  for (const Literal& condition : conditions_) {
    if (trail.holds(condition)) continue;
    if (open != nullptr || trail.fails(condition)) return true;
    open = &condition;
  }
  return open == nullptr ? squeeze(trail) : refuse(trail, *open);
}

bool DomainPropagator::squeeze(Trail& trail) const {
  std::vector<Literal> because(conditions_);
  const Time low = trail.low(x_), first = next_allowed(*allowed_, low);
  because.push_back(at_least(x_, previous_allowed(*allowed_, low) + 1));
  if (first > low && !trail.set(at_least(x_, first), because)) return false;
  const Time high = trail.high(x_), last = previous_allowed(*allowed_, high);
  because.back() = at_most(x_, next_allowed(*allowed_, high) - 1);
  return last >= high || trail.set(at_most(x_, last), because);
}

bool DomainPropagator::refuse(Trail& trail, Literal open) const {
  const Time low = trail.low(x_), high = trail.high(x_);
  if (next_allowed(*allowed_, low) <= high) return true;
  std::vector<Literal> because;
  for (const Literal condition : conditions_) {
    if (!(condition == open)) because.push_back(condition);
  }
  because.push_back(at_least(x_, previous_allowed(*allowed_, low) + 1));
  because.push_back(at_most(x_, next_allowed(*allowed_, low) - 1));
  return trail.set(!open, because);
}

}  // namespace coatday::solver::clause_learning
