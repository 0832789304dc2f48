#include "solver/clause_learning/solver.h"

namespace coatday::solver::clause_learning {
namespace {

constexpr long warm_up = 500;       // conflicts by the earliest start, before activity means something
constexpr long restart_unit = 100;  // conflicts
constexpr long clock_each = 64;     // conflicts between two looks at the clock

// 1 1 2 1 1 2 4 1 1 2 ...: Luby, Sinclair and Zuckerman (1993).
long luby(long i) {
  long size = 1;
  while (size < i + 1) size = 2 * size + 1;
  while (size - 1 != i) {
    size = (size - 1) / 2;
    i %= size;
  }
  return (size + 1) / 2;
}

}  // namespace

Solver::Solver(const Problem& problem) : model(problem), branching(model), analysis_(model.engine) { dead_ = !model.engine.begin(); }

void Solver::require(Literal l) {
  if (dead_) return;
  if (on_learned) on_learned({l});
  dead_ = !model.engine.trail.set(l, Reason{}) || !model.engine.propagate();
}

void Solver::probe(long moves, const std::function<bool()>& stop) {
  for (const Order& order : model.orders().all()) {
    if (moves <= 0 || stop()) return;
    if (!dead_ && !model.engine.trail.fixed(order.x)) moves -= try_out(yes(order.x));
    if (!dead_ && !model.engine.trail.fixed(order.x)) moves -= try_out(no(order.x));
  }
}

long Solver::try_out(Literal l) {
  Engine& engine = model.engine;
  const int before = engine.trail.length();
  engine.decide(l);
  const bool open = engine.propagate();
  const long moves = engine.trail.length() - before;
  engine.back(0);
  if (!open) require(!l);
  return moves;
}

Solver::Answer Solver::solve(const std::vector<Literal>& assumptions, Aim aim, long conflicts, const std::function<bool()>& stop) {
  const long last = conflicts_ + conflicts;
  long next_look = conflicts_;
  next_restart_ = conflicts_ + (restarts_ == 0 ? warm_up : restart_unit * luby(restarts_));
  std::optional<Answer> answer;
  while (!answer && !dead_) {
    if (!model.engine.propagate()) {
      learn();
      continue;
    }
    if (conflicts_ >= last) answer = Answer::unknown;
    if (conflicts_ >= next_look) {
      next_look = conflicts_ + clock_each;
      if (stop()) answer = Answer::unknown;
    }
    if (answer || (conflicts_ >= next_restart_ && !restart(aim))) continue;
    answer = advance(assumptions);
  }
  if (dead_) return Answer::none;
  model.engine.back(0);
  dead_ = !model.engine.propagate();
  return *answer;
}

void Solver::learn() {
  ++conflicts_;
  Engine& engine = model.engine;
  const LearnedClause& learned = analysis_();
  if (on_learned) on_learned(learned.clause);
  if (learned.clause.empty()) {
    dead_ = true;
    return;
  }
  for (const Literal l : learned.involved) branching.activity.bump(engine.trail, l);
  branching.activity.decay();
  engine.clauses.decay();
  engine.back(learned.backjump_level);
  branching.activity.back(learned.backjump_level);
  if (learned.clause.size() == 1) {
    dead_ = !engine.trail.set(learned.clause[0], Reason{});
  } else {
    const Clauses::Ref ref = engine.clauses.add(learned.clause, true, learned.block_distance);
    engine.trail.set(learned.clause[0], {Reason::clause, ref});
  }
}

// Goes back to the root. False if that proves that no schedule exists.
bool Solver::restart(Aim aim) {
  ++restarts_;
  next_restart_ = conflicts_ + restart_unit * luby(restarts_);
  rule_ = aim == Aim::prove || restarts_ % 2 == 1 ? Branching::Rule::active : Branching::Rule::earliest;
  model.engine.back(0);
  branching.activity.back(0);
  dead_ = !model.engine.propagate();
  if (dead_) return false;
  const bool full = model.engine.clauses.learned() > much_;
  model.engine.tidy(much_);
  if (full) {
    much_ += much_ / 10;
    branching.activity.shrink();
  }
  return true;
}

// Makes one decision.
std::optional<Solver::Answer> Solver::advance(const std::vector<Literal>& assumptions) {
  Engine& engine = model.engine;
  const std::size_t level = at(engine.trail.level());
  if (level < assumptions.size()) {
    if (engine.trail.fails(assumptions[level])) {
      if (on_refuted) on_refuted(assumptions);
      return Answer::none;
    }
    if (engine.trail.holds(assumptions[level])) {
      engine.deepen();
    } else {
      engine.decide(assumptions[level]);
    }
    return std::nullopt;
  }
  const auto decision = branching.next(rule_);
  if (decision) {
    engine.decide(*decision);
    return std::nullopt;
  }
  schedule_ = model.schedule();
  return Answer::found;
}

}  // namespace coatday::solver::clause_learning
