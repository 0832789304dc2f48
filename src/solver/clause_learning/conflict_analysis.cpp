#include "solver/clause_learning/conflict_analysis.h"

#include <algorithm>

namespace coatday::solver::clause_learning {
namespace {

constexpr int deepest = 24;  // levels of the recursion in follows()

}  // namespace

const LearnedClause& ConflictAnalysis::operator()() {
  reset();
  Trail& trail = engine_.trail;
  because_.clear();
  engine_.explain_conflict(because_);
  int level = 0;
  for (const Literal l : because_) {
    const int origin = trail.origin(l);
    if (origin >= 0) level = std::max(level, trail[origin].level);
  }
  if (level == 0) return learned_;
  engine_.back(level);
  for (const Literal l : because_) need(l, level);
  for (int i = trail.length() - 1;; --i) {
    const BoundVar bound_var = trail[i].bound_var;
    Needed& needed = needed_[at(bound_var)];
    if (needed.origin != i) continue;
    const Literal l{bound_var, needed.value};
    if (open_ == 1) {
      finish(l);
      return learned_;
    }
    needed.origin = -1;
    --open_;
    because_.clear();
    if (trail[i].reason.kind == Reason::clause) engine_.clauses.bump(trail[i].reason.data);
    engine_.explain(i, l, because_);
    for (const Literal b : because_) need(b, level);
  }
}

void ConflictAnalysis::reset() {
  learned_.clause.clear();
  learned_.involved.clear();
  learned_.backjump_level = learned_.block_distance = 0;
  needed_.resize(at(2 * engine_.trail.variables()));
  for (const BoundVar bound_var : bound_vars_) needed_[at(bound_var)].origin = -1;
  bound_vars_.clear();
  open_ = 0;
}

void ConflictAnalysis::need(Literal l, int level) {
  const Trail& trail = engine_.trail;
  Needed& needed = needed_[at(l.bound_var)];
  if (needed.origin >= 0 && needed.value >= l.value) return;
  const int origin = trail.origin(l);
  if (origin < 0 || trail[origin].level == 0) return;
  learned_.involved.push_back(l);
  if (needed.origin < 0) {
    bound_vars_.push_back(l.bound_var);
  } else if (trail[needed.origin].level == level) {
    --open_;
  }
  needed = {l.value, origin};
  open_ += trail[origin].level == level ? 1 : 0;
}

void ConflictAnalysis::finish(Literal asserted) {
  const Trail& trail = engine_.trail;
  ++round_;
  known_.resize(std::max(known_.size(), at(trail.length())));
  std::vector<Literal>& clause = learned_.clause;
  clause.push_back(!asserted);
  std::sort(bound_vars_.begin(), bound_vars_.end());
  bound_vars_.erase(std::unique(bound_vars_.begin(), bound_vars_.end()), bound_vars_.end());
  for (const BoundVar bound_var : bound_vars_) {
    const Needed& needed = needed_[at(bound_var)];
    if (needed.origin < 0 || bound_var == asserted.bound_var) continue;
    const Literal l{bound_var, needed.value};
    if (trail[needed.origin].reason.kind != Reason::decision) {
      because_.clear();
      engine_.explain(needed.origin, l, because_);
      const std::vector<Literal> direct = because_;
      if (std::all_of(direct.begin(), direct.end(), [&](Literal b) { return follows(b, needed.origin, 0); })) continue;
    }
    clause.push_back(!l);
  }
  std::vector<int> block_distance{trail[needed_[at(asserted.bound_var)].origin].level};
  for (std::size_t i = 1; i < clause.size(); ++i) {
    const int level = trail[trail.origin(!clause[i])].level;
    block_distance.push_back(level);
    if (level <= learned_.backjump_level) continue;
    learned_.backjump_level = level;
    std::swap(clause[1], clause[i]);
  }
  std::sort(block_distance.begin(), block_distance.end());
  learned_.block_distance = static_cast<int>(std::unique(block_distance.begin(), block_distance.end()) - block_distance.begin());
}

// Whether the clause can do without the literal: it holds at the root, or an earlier entry needs it anyway, or it follows from such
// literals.
bool ConflictAnalysis::follows(Literal l, int later, int depth) {
  const Trail& trail = engine_.trail;
  const int origin = trail.origin(l);
  if (origin < 0 || trail[origin].level == 0) return true;
  const Needed& needed = needed_[at(l.bound_var)];
  if (needed.origin >= 0 && needed.origin < later && needed.value >= l.value) return true;
  if (trail[origin].reason.kind == Reason::decision || depth >= deepest) return false;
  Known& known = known_[at(origin)];
  if (known.round != round_) known = {round_, -2 * unreachable, 2 * unreachable};
  if (l.value <= known.follows) return true;
  if (l.value >= known.fails) return false;
  if (pool_.size() <= at(depth)) pool_.resize(at(depth + 1));
  pool_[at(depth)].clear();
  engine_.explain(origin, l, pool_[at(depth)]);
  for (std::size_t i = 0; i < pool_[at(depth)].size(); ++i) {
    if (follows(pool_[at(depth)][i], origin, depth + 1)) continue;
    known.fails = l.value;
    return false;
  }
  known.follows = l.value;
  return true;
}

}  // namespace coatday::solver::clause_learning
