#include "solver/clause_learning/conflict_analysis.h"

#include <algorithm>

namespace coatday::solver::learn {
namespace {

constexpr int deepest = 24;  // of the recursion that looks for what follows from the rest

}  // namespace

const Lesson& Analysis::operator()() {
  reset();
  Trail& trail = engine_.trail;
  because_.clear();
  engine_.explain_conflict(because_);
  int level = 0;
  for (const Literal l : because_) {
    const int origin = trail.origin(l);
    if (origin >= 0) level = std::max(level, trail[origin].level);
  }
  if (level == 0) return lesson_;
  engine_.back(level);
  for (const Literal l : because_) need(l, level);
  for (int i = trail.length() - 1;; --i) {
    const Side side = trail[i].side;
    Needed& needed = needed_[at(side)];
    if (needed.origin != i) continue;
    const Literal l{side, needed.value};
    if (open_ == 1) {
      finish(l);
      return lesson_;
    }
    needed.origin = -1;
    --open_;
    because_.clear();
    if (trail[i].reason.kind == Reason::clause) engine_.clauses.bump(trail[i].reason.data);
    engine_.explain(i, l, because_);
    for (const Literal b : because_) need(b, level);
  }
}

void Analysis::reset() {
  lesson_.clause.clear();
  lesson_.met.clear();
  lesson_.back_to = lesson_.levels = 0;
  needed_.resize(at(2 * engine_.trail.variables()));
  for (const Side side : sides_) needed_[at(side)].origin = -1;
  sides_.clear();
  open_ = 0;
}

void Analysis::need(Literal l, int level) {
  const Trail& trail = engine_.trail;
  Needed& needed = needed_[at(l.side)];
  if (needed.origin >= 0 && needed.value >= l.value) return;
  const int origin = trail.origin(l);
  if (origin < 0 || trail[origin].level == 0) return;
  lesson_.met.push_back(l);
  if (needed.origin < 0) {
    sides_.push_back(l.side);
  } else if (trail[needed.origin].level == level) {
    --open_;
  }
  needed = {l.value, origin};
  open_ += trail[origin].level == level ? 1 : 0;
}

void Analysis::finish(Literal asserted) {
  const Trail& trail = engine_.trail;
  ++round_;
  known_.resize(std::max(known_.size(), at(trail.length())));
  std::vector<Literal>& clause = lesson_.clause;
  clause.push_back(!asserted);
  std::sort(sides_.begin(), sides_.end());
  sides_.erase(std::unique(sides_.begin(), sides_.end()), sides_.end());
  for (const Side side : sides_) {
    const Needed& needed = needed_[at(side)];
    if (needed.origin < 0 || side == asserted.side) continue;
    const Literal l{side, needed.value};
    if (trail[needed.origin].reason.kind != Reason::decision) {
      because_.clear();
      engine_.explain(needed.origin, l, because_);
      const std::vector<Literal> direct = because_;
      if (std::all_of(direct.begin(), direct.end(), [&](Literal b) { return follows(b, needed.origin, 0); })) continue;
    }
    clause.push_back(!l);
  }
  std::vector<int> levels{trail[needed_[at(asserted.side)].origin].level};
  for (std::size_t i = 1; i < clause.size(); ++i) {
    const int level = trail[trail.origin(!clause[i])].level;
    levels.push_back(level);
    if (level <= lesson_.back_to) continue;
    lesson_.back_to = level;
    std::swap(clause[1], clause[i]);
  }
  std::sort(levels.begin(), levels.end());
  lesson_.levels = static_cast<int>(std::unique(levels.begin(), levels.end()) - levels.begin());
}

// Whether the literal holds at the root, is needed anyway (for other reasons than the later entry that it is to explain), or follows from such.
bool Analysis::follows(Literal l, int later, int depth) {
  const Trail& trail = engine_.trail;
  const int origin = trail.origin(l);
  if (origin < 0 || trail[origin].level == 0) return true;
  const Needed& needed = needed_[at(l.side)];
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

}  // namespace coatday::solver::learn
