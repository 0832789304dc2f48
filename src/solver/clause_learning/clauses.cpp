#include "solver/clause_learning/clauses.h"

#include <algorithm>

namespace coatday::solver::clause_learning {

Clauses::Ref Clauses::add(std::span<const Literal> literals, bool learned, int block_distance) {
  const auto ref = static_cast<Ref>(clauses_.size());
  clauses_.push_back({static_cast<std::uint32_t>(literals_.size()), static_cast<std::uint32_t>(literals.size()), block_distance,
                      learned ? step_ : 0, learned});
  literals_.insert(literals_.end(), literals.begin(), literals.end());
  learned_ += learned ? 1 : 0;
  watch(literals[0], ref, literals[1]);
  watch(literals[1], ref, literals[0]);
  return ref;
}

void Clauses::watch(Literal l, Ref ref, Literal blocker) { watches_[at(l.bound_var ^ 1)].push_back({1 - l.value, ref, blocker}); }

bool Clauses::propagate(Trail& trail, const Entry& entry) {
  const BoundVar failed = entry.bound_var ^ 1;
  const Time before = entry.before, now = entry.value;  // copied, as the entry moves when the trail grows
  std::vector<Watch>& list = watches_[at(entry.bound_var)];
  std::size_t kept = 0;
  for (std::size_t i = 0; i < list.size(); ++i) {
    const Watch w = list[i];
    list[kept++] = w;
    if (w.reached > now || w.reached <= before || trail.holds(w.blocker)) continue;
    Clause& clause = clauses_[w.clause];
    Literal* const lits = literals_.data() + clause.begin;
    if (lits[0].bound_var == failed) std::swap(lits[0], lits[1]);
    if (trail.holds(lits[0])) {
      list[kept - 1].blocker = lits[0];
      continue;
    }
    const auto other = std::find_if(lits + 2, lits + clause.size, [&](Literal l) { return !trail.fails(l); });
    if (other != lits + clause.size) {
      std::swap(lits[1], *other);
      watch(lits[1], w.clause, lits[0]);
      --kept;
    } else if (!trail.set(lits[0], {Reason::clause, w.clause})) {
      list.erase(list.begin() + static_cast<std::ptrdiff_t>(kept), list.begin() + static_cast<std::ptrdiff_t>(i + 1));
      return false;
    }
  }
  list.resize(kept);
  return true;
}

void Clauses::bump(Ref ref) {
  Clause& clause = clauses_[ref];
  if (!clause.learned) return;
  clause.activity += step_;
  if (clause.activity < 1e20F) return;
  for (Clause& c : clauses_) c.activity *= 1e-20F;
  step_ *= 1e-20F;
}

std::vector<char> Clauses::useless() const {
  std::vector<Ref> candidates;
  for (Ref r = 0; r < clauses_.size(); ++r) {
    if (clauses_[r].learned && clauses_[r].block_distance > 2) candidates.push_back(r);
  }
  std::sort(candidates.begin(), candidates.end(), [&](Ref a, Ref b) {
    return clauses_[a].activity != clauses_[b].activity ? clauses_[a].activity < clauses_[b].activity : a < b;
  });
  std::vector<char> result(clauses_.size(), 0);
  for (std::size_t i = 0; i < candidates.size() / 2; ++i) result[candidates[i]] = 1;
  return result;
}

void Clauses::reduce(const Trail& trail) {
  const std::vector<char> dropped = useless();
  std::vector<Literal> literals;
  std::vector<Clause> clauses;
  for (auto& list : watches_) list.clear();
  learned_ = 0;
  for (Ref r = 0; r < clauses_.size(); ++r) {
    const std::span<const Literal> old = (*this)[r];
    if (dropped[r] != 0 || std::any_of(old.begin(), old.end(), [&](Literal l) { return trail.holds(l); })) continue;
    Clause clause = clauses_[r];
    clause.begin = static_cast<std::uint32_t>(literals.size());
    std::copy_if(old.begin(), old.end(), std::back_inserter(literals), [&](Literal l) { return !trail.fails(l); });
    clause.size = static_cast<std::uint32_t>(literals.size()) - clause.begin;
    learned_ += clause.learned ? 1 : 0;
    clauses.push_back(clause);
  }
  literals_ = std::move(literals);
  clauses_ = std::move(clauses);
  for (Ref r = 0; r < clauses_.size(); ++r) {
    const Literal* const l = literals_.data() + clauses_[r].begin;
    watch(l[0], r, l[1]);
    watch(l[1], r, l[0]);
  }
}

}  // namespace coatday::solver::clause_learning
