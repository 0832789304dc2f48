#include "solver/clause_learning/bound_activity.h"

#include <algorithm>

namespace coatday::solver::clause_learning {
namespace {

std::uint64_t key(Literal l) {
  return (static_cast<std::uint64_t>(static_cast<std::uint32_t>(l.bound_var)) << 32U) | static_cast<std::uint32_t>(l.value);
}

}  // namespace

void BoundActivity::bump(const Trail& trail, Literal given) {
  const Literal l = trail.tight((given.bound_var & 1) == 0 ? given : !given);
  const auto [found, is_new] = index_.try_emplace(key(l), static_cast<int>(atoms_.size()));
  const int a = found->second;
  if (is_new) {
    atoms_.push_back({l, 0, -1});
    insert(a);
  }
  Atom& atom = atoms_[at(a)];
  atom.score += step_;
  if (atom.place >= 0) rise(atom.place);
  if (step_ < 1e100) return;
  for (Atom& each : atoms_) each.score *= 1e-100;
  step_ *= 1e-100;
}

std::optional<Literal> BoundActivity::next(const Trail& trail) {
  while (!heap_.empty()) {
    const int a = pop();
    passed_.push_back({a, trail.level()});
    const Literal l = atoms_[at(a)].literal;
    if (!trail.holds(l) && !trail.fails(l)) return l;
  }
  return std::nullopt;
}

void BoundActivity::back(int level) {
  while (!passed_.empty() && passed_.back().level >= level) {
    if (atoms_[at(passed_.back().atom)].place < 0) insert(passed_.back().atom);
    passed_.pop_back();
  }
}

void BoundActivity::shrink() {
  std::vector<Atom> kept;
  for (const Atom& atom : atoms_) {
    if (atom.score > step_ * 1e-12) kept.push_back(atom);
  }
  atoms_ = std::move(kept);
  index_.clear();
  heap_.clear();
  passed_.clear();
  for (int a = 0; a < static_cast<int>(atoms_.size()); ++a) {
    index_[key(atoms_[at(a)].literal)] = a;
    insert(a);
  }
}

void BoundActivity::insert(int atom) {
  heap_.push_back(atom);
  atoms_[at(atom)].place = static_cast<int>(heap_.size()) - 1;
  rise(atoms_[at(atom)].place);
}

void BoundActivity::put(int atom, int place) {
  heap_[at(place)] = atom;
  atoms_[at(atom)].place = place;
}

void BoundActivity::rise(int place) {
  const int atom = heap_[at(place)];
  while (place > 0 && above(atom, heap_[at((place - 1) / 2)])) {
    put(heap_[at((place - 1) / 2)], place);
    place = (place - 1) / 2;
  }
  put(atom, place);
}

void BoundActivity::sink(int place) {
  const int atom = heap_[at(place)];
  const int size = static_cast<int>(heap_.size());
  for (int child = 2 * place + 1; child < size; child = 2 * place + 1) {
    if (child + 1 < size && above(heap_[at(child + 1)], heap_[at(child)])) ++child;
    if (!above(heap_[at(child)], atom)) break;
    put(heap_[at(child)], place);
    place = child;
  }
  put(atom, place);
}

int BoundActivity::pop() {
  const int top = heap_.front();
  const int last = heap_.back();
  heap_.pop_back();
  atoms_[at(top)].place = -1;
  if (top != last) {
    put(last, 0);
    sink(0);
  }
  return top;
}

}  // namespace coatday::solver::clause_learning
