#include "tests/solver/verify.h"

#include <algorithm>

namespace coatday::solver::test {
namespace {

using clause_learning::Literal;
using clause_learning::Reason;

constexpr Time unknown = -unreachable;

std::vector<Literal> opposite(std::span<const Literal> literals) {
  std::vector<Literal> result;
  for (const Literal l : literals) result.push_back(!l);
  return result;
}

std::string text(Literal l) {
  const bool up = (l.bound_var & 1) == 0;
  return "x" + std::to_string(clause_learning::variable(l)) + (up ? " >= " : " <= ") + std::to_string(up ? l.value : -l.value);
}

}  // namespace

Fresh::Fresh(const Problem& problem) : model_(problem) {
  model_.engine.leave_nothing_out();
  dead_ = !model_.engine.begin();
}

bool Fresh::follow(const clause_learning::Model& other) {
  std::vector<std::pair<clause_learning::Var, std::pair<int, int>>> asked;
  for (const auto& [pair, x] : other.orders().precedences()) asked.emplace_back(x, pair);
  std::sort(asked.begin(), asked.end());
  return std::all_of(asked.begin(), asked.end(), [this](const auto& each) {
    return model_.orders().precedence(each.second.first, each.second.second) == clause_learning::yes(each.first);
  });
}

bool Fresh::assume(std::span<const Literal> literals) {
  clause_learning::Engine& engine = model_.engine;
  engine.deepen();
  return std::all_of(literals.begin(), literals.end(), [&](Literal l) { return engine.trail.set(l, Reason{}); }) && engine.propagate();
}

bool Fresh::refutes(std::span<const Literal> literals) {
  if (dead_) return true;
  const bool open = assume(literals);
  model_.engine.back(0);
  return !open;
}

bool Fresh::implies(std::span<const Literal> premises, Literal conclusion) {
  if (dead_) return true;
  const bool follows = !assume(premises) || model_.engine.trail.holds(conclusion);
  model_.engine.back(0);
  if (follows) return true;
  std::vector<Literal> all(premises.begin(), premises.end());
  all.push_back(!conclusion);
  return refutes(all);
}

void Fresh::add(std::vector<Literal> clause) {
  clause_learning::Engine& engine = model_.engine;
  std::erase_if(clause, [&](Literal l) { return engine.trail.fails(l); });
  if (dead_ || std::any_of(clause.begin(), clause.end(), [&](Literal l) { return engine.trail.holds(l); })) return;
  if (clause.size() > 1) {
    engine.clauses.add(clause, false);
  } else {
    dead_ = clause.empty() || !engine.trail.set(clause[0], Reason{}) || !engine.propagate();
  }
}

Verifier::Verifier(const Problem& problem, clause_learning::Solver& solver) : solver_(solver), bare_(problem), learned_(problem) {
  solver.model.engine.on_explained = [this](int entry, const Literal* conclusion, std::span<const Literal> premises) {
    explained(entry, conclusion, premises);
  };
  solver.on_learned = [this](const std::vector<Literal>& clause) { learned(clause); };
  solver.on_refuted = [this](const std::vector<Literal>& assumptions) { refuted(assumptions); };
}

void Verifier::hear(const Schedule& witness) {
  witness_.assign(solver::at(solver_.model.engine.trail.variables()), unknown);
  solver_.model.values(witness, witness_);
}

bool Verifier::denied(std::span<const Literal> any) const {
  return !witness_.empty() && std::all_of(any.begin(), any.end(), [this](Literal l) {
    const std::size_t x = solver::at(clause_learning::variable(l));
    if (x >= witness_.size() || witness_[x] == unknown) return false;
    return ((l.bound_var & 1) == 0 ? witness_[x] : -witness_[x]) < l.value;
  });
}

void Verifier::follow() {
  if (!bare_.follow(solver_.model) || !learned_.follow(solver_.model)) complain("the models differ", {});
}

bool Verifier::by_clause(int entry) const {
  const clause_learning::Trail& trail = solver_.model.engine.trail;
  return entry >= 0 ? trail[entry].reason.kind == Reason::clause
                    : trail.conflict().implied && trail.conflict().reason.kind == Reason::clause;
}

void Verifier::explained(int entry, const Literal* conclusion, std::span<const Literal> premises) {
  follow();
  ++tally_.explanations;
  const clause_learning::Trail& trail = solver_.model.engine.trail;
  for (const Literal l : premises) {
    if (!trail.holds(l)) complain("a premise that does not hold", {&l, 1});
    if (entry >= 0 && trail.origin(l) >= entry) complain("a premise that came later", {&l, 1});
  }
  std::vector<Literal> clause = opposite(premises);
  if (conclusion != nullptr) clause.push_back(*conclusion);
  if (denied(clause)) complain("an explanation that a schedule breaks", clause);
  Fresh& judge = by_clause(entry) ? learned_ : bare_;
  if (conclusion == nullptr ? judge.refutes(premises) : judge.implies(premises, *conclusion)) return;
  complain(conclusion == nullptr ? "no conflict" : "does not follow: " + text(*conclusion), premises);
}

void Verifier::learned(const std::vector<Literal>& clause) {
  follow();
  ++tally_.clauses;
  if (denied(clause)) complain("a clause that a schedule breaks", clause);
  if (!learned_.refutes(opposite(clause))) return complain("a clause that propagation does not confirm", clause);
  learned_.add(clause);
}

void Verifier::refuted(const std::vector<Literal>& assumptions) {
  follow();
  ++tally_.refutations;
  if (!learned_.refutes(assumptions)) complain("not refuted", assumptions);
}

void Verifier::complain(const std::string& what, std::span<const Literal> literals) {
  std::string line = what + ":";
  for (const Literal l : literals) line += " " + text(l);
  complaints_.push_back(std::move(line));
}

}  // namespace coatday::solver::test
