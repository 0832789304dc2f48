#include "solver/clause_learning/trail.h"

#include "solver/base/calendar.h"

namespace coatday::solver::clause_learning {

Var Trail::add(Time low, Time high, const Intervals* allowed) {
  bounds_.push_back(low);
  bounds_.push_back(-high);
  last_.resize(bounds_.size(), -1);
  allowed_.push_back(allowed != nullptr && allowed->size() > 1 ? allowed : nullptr);
  return variables() - 1;
}

Literal Trail::tight(Literal l) const {
  const Intervals* allowed = allowed_[at(variable(l))];
  if (allowed == nullptr) return l;
  return {l.bound_var, (l.bound_var & 1) == 0 ? next_allowed(*allowed, l.value) : -previous_allowed(*allowed, -l.value)};
}

Literal Trail::loose(Literal l) const {
  const Intervals* allowed = allowed_[at(variable(l))];
  if (allowed == nullptr) return l;
  return {l.bound_var, (l.bound_var & 1) == 0 ? previous_allowed(*allowed, l.value - 1) + 1 : 1 - next_allowed(*allowed, 1 - l.value)};
}

bool Trail::set(Literal given, Reason reason) {
  if (holds(given)) return true;
  const Literal l = tight(given);
  if (fails(l)) {
    conflict_.implied = true;
    conflict_.literal = l;
    conflict_.reason = reason;
    return false;
  }
  Time& bound = bounds_[at(l.bound_var)];
  int& last = last_[at(l.bound_var)];
  entries_.push_back({l.bound_var, l.value, bound, last, level(), moves(l.bound_var), reason});
  bound = l.value;
  last = length() - 1;
  return true;
}

bool Trail::set(Literal l, std::span<const Literal> because) {
  if (holds(l)) return true;
  const auto data = static_cast<std::uint32_t>(stored_.size());
  stored_.push_back({0, static_cast<Time>(because.size())});
  stored_.insert(stored_.end(), because.begin(), because.end());
  return set(l, {Reason::stored, data});
}

std::span<const Literal> Trail::stored(Reason reason) const {
  const std::size_t begin = reason.data;
  return {stored_.data() + begin + 1, at(stored_[begin].value)};
}

bool Trail::refute(std::span<const Literal> together) {
  conflict_.implied = false;
  conflict_.together.assign(together.begin(), together.end());
  return false;
}

void Trail::back(int to) {
  if (to >= level()) return;
  const Mark mark = marks_[at(to)];
  while (length() > mark.length) {
    const Entry& e = entries_.back();
    bounds_[at(e.bound_var)] = e.before;
    last_[at(e.bound_var)] = e.previous;
    entries_.pop_back();
  }
  stored_.resize(mark.stored);
  marks_.resize(at(to));
}

void Trail::forget() {
  for (const Entry& e : entries_) last_[at(e.bound_var)] = -1;
  entries_.clear();
  stored_.clear();
}

}  // namespace coatday::solver::clause_learning
