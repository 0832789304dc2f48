#include "solver/clause_learning/branching.h"

#include <tuple>

namespace coatday::solver::clause_learning {

Branching::Branching(const Model& model) : model_(model), questions_(at(model.runs())) {
  for (int i = 0; i < model.runs(); ++i) {
    if (model.run(i).present >= 0 && !model.problem().activities[at(i)].optional) questions_[at(i)].push_back(model.run(i).present);
    if (model.run(i).shared >= 0) questions_[at(i)].push_back(model.run(i).shared);
  }
  for (std::size_t h = 0; h < model.problem().holds.size(); ++h) {
    const Hold& hold = model.problem().holds[h];
    for (std::size_t c = 0; c < hold.choices.size(); ++c) {
      const Var choice = model.choice(static_cast<int>(h), static_cast<int>(c));
      if (choice >= 0) questions_[at(hold.first)].push_back(choice);
    }
  }
}

void Branching::prefer(const Schedule& schedule) {
  preferred_.resize(at(model_.engine.trail.variables()), -unreachable);
  model_.values(schedule, preferred_);
}

std::optional<Literal> Branching::next(Rule rule) {
  if (rule == Rule::active) {
    if (const auto atom = activity.next(model_.engine.trail)) {
      const std::size_t x = at(variable(*atom));
      const bool as_it_is = x < preferred_.size() && preferred_[x] >= atom->value;
      return as_it_is ? *atom : !*atom;
    }
  }
  if (const auto start = earliest()) return start;
  return any_open();
}

std::optional<Literal> Branching::earliest() const {
  const Trail& trail = model_.engine.trail;
  int best = -1;
  for (int i = 0; i < model_.runs(); ++i) {
    const Run& r = model_.run(i);
    if (trail.fixed(r.start) || !may_run(i)) continue;
    if (best < 0 || std::tuple(trail.low(r.start), trail.high(r.start)) <
                        std::tuple(trail.low(model_.run(best).start), trail.high(model_.run(best).start))) {
      best = i;
    }
  }
  if (best < 0) return std::nullopt;
  if (const auto question = question_of(best)) return question;
  return at_most(model_.run(best).start, trail.low(model_.run(best).start));
}

// A remedy waits until a window is missed. A branch is decided when one of its activities would be next.
bool Branching::may_run(int a) const {
  const Var there = model_.run(a).present;
  if (there < 0) return true;
  const bool remedy = model_.problem().activities[at(a)].optional;
  return remedy ? model_.engine.trail.holds(yes(there)) : !model_.engine.trail.fails(yes(there));
}

std::optional<Literal> Branching::question_of(int a) const {
  for (const Var x : questions_[at(a)]) {
    if (model_.engine.trail.fixed(x)) continue;
    return x == model_.run(a).shared ? no(x) : yes(x);
  }
  return std::nullopt;
}

std::optional<Literal> Branching::any_open() const {
  const Trail& trail = model_.engine.trail;
  for (int i = 0; i < model_.runs(); ++i) {
    if (const auto question = question_of(i)) return question;
  }
  for (Var x = 0; x < trail.variables(); ++x) {
    if (!trail.fixed(x) && model_.orders().matters(x)) return at_most(x, trail.low(x));
  }
  return std::nullopt;
}

}  // namespace coatday::solver::clause_learning
