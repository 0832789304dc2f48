#include "solver/clause_learning/engine.h"

#include <algorithm>

namespace coatday::solver::clause_learning {

Var Engine::add(Time low, Time high, const Intervals* allowed) {
  const Var x = trail.add(low, high, allowed);
  clauses.grow(x + 1);
  arcs.grow(x + 1);
  watching_.resize(at(2 * (x + 1)));
  return x;
}

void Engine::clause(std::vector<Literal> literals) {
  if (std::any_of(literals.begin(), literals.end(), [&](Literal l) { return trail.holds(l); })) return;
  std::erase_if(literals, [&](Literal l) { return trail.fails(l); });
  if (literals.empty()) {
    sound_ = false;
  } else if (literals.size() == 1) {
    sound_ = trail.set(literals[0], Reason{}) && sound_;
  } else {
    clauses.add(literals, false);
  }
}

void Engine::add(std::unique_ptr<Propagator> propagator, const std::vector<Wake>& wakes) {
  const int index = static_cast<int>(propagators_.size());
  for (const Wake& w : wakes) watching_[at(w.bound_var)].push_back({index, w.item});
  propagators_.push_back(std::move(propagator));
  is_due_.push_back(1);
  due_.push_back(index);
}

bool Engine::begin() { return sound_ && arcs.propagate_all(trail) && propagate(); }

bool Engine::propagate() {
  if (!propagate_pending()) return false;
  while (!due_.empty()) {
    const auto first = std::min_element(due_.begin(), due_.end());  // the one added first
    const int p = *first;
    due_.erase(first);
    is_due_[at(p)] = 0;
    if (!propagators_[at(p)]->propagate(trail) || !propagate_pending()) return false;
  }
  return true;
}

void Engine::leave_nothing_out() {
  for (const auto& p : propagators_) p->leave_nothing_out();
}

bool Engine::propagate_pending() {
  while (next_ < trail.length()) {
    const Entry entry = trail[next_++];
    const bool last = trail.bound(entry.bound_var) == entry.value;  // if not, its last move follows the arcs
    if (last) wake(entry.bound_var);
    if ((last && !arcs.propagate(trail, entry.bound_var)) || !clauses.propagate(trail, entry)) return false;
  }
  return true;
}

void Engine::wake(BoundVar bound_var) {
  for (const Watching& w : watching_[at(bound_var)]) {
    propagators_[at(w.propagator)]->wake(w.item);
    if (is_due_[at(w.propagator)] != 0) continue;
    is_due_[at(w.propagator)] = 1;
    due_.push_back(w.propagator);
  }
}

void Engine::deepen() {
  trail.deepen();
  for (const auto& p : propagators_) p->deepen();
}

void Engine::decide(Literal l) {
  deepen();
  trail.set(l, Reason{});
}

void Engine::back(int level) {
  if (level >= trail.level()) return;
  trail.back(level);
  next_ = trail.length();
  for (const auto& p : propagators_) p->back(level);
  for (const int p : due_) is_due_[at(p)] = 0;
  due_.clear();
}

void Engine::tidy(std::size_t much) {
  if (trail.length() > 0) arcs.tidy(trail);
  trail.forget();
  next_ = 0;
  if (clauses.learned() > much) clauses.reduce(trail);
}

void Engine::explain(int entry, Literal l, std::vector<Literal>& because) const {
  const std::size_t before = because.size();
  const Literal least = trail.loose(l);
  add_reason(trail[entry].reason, least, because);
  if (on_explained) on_explained(entry, &least, std::span<const Literal>(because).subspan(before));
}

void Engine::explain_conflict(std::vector<Literal>& because) const {
  const std::size_t before = because.size();
  const Trail::Conflict& conflict = trail.conflict();
  if (conflict.implied) {
    // The least value that is too much is the easiest to explain.
    const BoundVar bound_var = conflict.literal.bound_var;
    const Literal least = trail.loose({bound_var, 1 - trail.bound(bound_var ^ 1)});
    add_reason(conflict.reason, least, because);
    because.push_back(!least);
  } else {
    because.insert(because.end(), conflict.together.begin(), conflict.together.end());
  }
  if (on_explained) on_explained(-1, nullptr, std::span<const Literal>(because).subspan(before));
}

void Engine::add_reason(Reason reason, Literal l, std::vector<Literal>& because) const {
  switch (reason.kind) {
    case Reason::decision:
      break;
    case Reason::clause: {
      const std::span<const Literal> literals = clauses[reason.data];
      for (const Literal other : literals) {
        if (other.bound_var != l.bound_var) because.push_back(!other);
      }
      break;
    }
    case Reason::arc:
      arcs.explain(reason.data, l, because);
      break;
    case Reason::stored: {
      const std::span<const Literal> literals = trail.stored(reason);
      because.insert(because.end(), literals.begin(), literals.end());
      break;
    }
  }
}

}  // namespace coatday::solver::clause_learning
