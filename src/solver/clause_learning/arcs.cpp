#include "solver/clause_learning/arcs.h"

#include <algorithm>
#include <utility>

namespace coatday::solver::clause_learning {
namespace {

constexpr std::size_t longest_cycle = 1000;  // arcs

}  // namespace

Mapping::Mapping(Function f, Time low, Time high) : f_(std::move(f)), low_(low), high_(high) {
  if (!f_) return;
  const auto known = f_->lag();
  if (known && high + *known < unreachable) {
    lag_ = *known;
    f_ = nullptr;
    return;
  }
  lag_ = f_->at(low) - low;
  for (Time t = low; t <= high; ++t) {
    const Time value = f_->at(t);
    if (value >= unreachable || value - t != lag_) return;
  }
  f_ = nullptr;
}

void Arcs::minimum(Var x, const Mapping& f, Var y, Conditions conditions) {
  const int c = conditions.empty() ? -1 : static_cast<int>(conditions_.size());
  if (c >= 0) conditions_.push_back(std::move(conditions));
  add(2 * x, 2 * y, f, Kind::minimum_ahead, c);
  add(2 * y + 1, 2 * x + 1, f, Kind::minimum_back, c);
}

void Arcs::maximum(Var x, const Mapping& f, Var y, Conditions conditions) {
  const int c = conditions.empty() ? -1 : static_cast<int>(conditions_.size());
  if (c >= 0) conditions_.push_back(std::move(conditions));
  add(2 * x + 1, 2 * y + 1, f, Kind::maximum_ahead, c);
  add(2 * y, 2 * x, f, Kind::maximum_back, c);
}

void Arcs::add(BoundVar from, BoundVar to, const Mapping& f, Kind kind, int conditions) {
  const auto index = static_cast<std::uint32_t>(arcs_.size());
  Arc arc{from, to, 0, kind, -1, conditions, conditions < 0 ? Literal{} : conditions_[at(conditions)].front()};
  if (f.constant()) {
    const bool minimum = kind == Kind::minimum_ahead || kind == Kind::minimum_back;
    arc.kind = Kind::constant;
    arc.lag = minimum ? f.lag() : -f.lag();
  } else {
    arc.mapping = static_cast<int>(mappings_.size());
    mappings_.push_back(f);
  }
  arcs_.push_back(arc);
  out_[at(from)].push_back(index);
  if (conditions < 0) return;
  for (const Literal condition : conditions_[at(conditions)]) conditioned_[at(condition.bound_var)].push_back(index);
}

// In terms of bound variables: an upper bound is a lower bound of the negative.
Time Arcs::image(const Arc& arc, Time a) const {
  if (arc.kind == Kind::constant) return a + arc.lag;
  const Mapping& f = mappings_[at(arc.mapping)];
  switch (arc.kind) {
    case Kind::minimum_ahead:
      return f.at(a);
    case Kind::minimum_back:
      return -f.latest(-a);
    case Kind::maximum_ahead:
      return -f.at(-a);
    default:
      return f.latest(a - 1) + 1;
  }
}

// The least a with image(a) >= v.
Time Arcs::preimage(const Arc& arc, Time v) const {
  if (arc.kind == Kind::constant) return v - arc.lag;
  const Mapping& f = mappings_[at(arc.mapping)];
  switch (arc.kind) {
    case Kind::minimum_ahead:
      return f.latest(v - 1) + 1;
    case Kind::minimum_back:
      return 1 - f.at(1 - v);
    case Kind::maximum_ahead:
      return -f.latest(-v);
    default:
      return f.at(v - 1) + 1;
  }
}

bool Arcs::follow(Trail& trail, std::uint32_t index) const {
  const Arc& arc = arcs_[index];
  if (arc.conditions >= 0 && trail.fails(arc.first_condition)) return true;
  const Literal implied{arc.to, image(arc, trail.bound(arc.from))};
  if (trail.holds(implied)) return true;
  return arc.conditions < 0 ? move(trail, index, implied) : follow_conditioned(trail, index, implied);
}

// Looks for a cycle before the bound creeps far around it. The more often the bound has moved, the rarer the look.
bool Arcs::move(Trail& trail, std::uint32_t index, Literal implied) const {
  if (const int moves = trail.moves(implied.bound_var); moves > 0 && (moves & (moves + 1)) == 0) {
    std::vector<Literal> because;
    const std::vector<std::uint32_t> cycle = growing_cycle(trail, index, implied);
    for (const std::uint32_t arc : cycle) {
      const int c = arcs_[arc].conditions;
      if (c >= 0) because.insert(because.end(), conditions_[at(c)].begin(), conditions_[at(c)].end());
    }
    if (!cycle.empty()) return trail.refute(because);
  }
  return trail.set(implied, {Reason::arc, index});
}

// The constant arcs by which the bound follows from a lower bound of the same variable. Empty if there are none.
std::vector<std::uint32_t> Arcs::growing_cycle(const Trail& trail, std::uint32_t index, Literal implied) const {
  std::vector<std::uint32_t> result;
  Literal needed = implied;
  while (result.size() < longest_cycle && arcs_[index].kind == Kind::constant) {
    const Arc& arc = arcs_[index];
    result.push_back(index);
    needed = {arc.from, needed.value - arc.lag};
    if (needed.bound_var == implied.bound_var) return needed.value < implied.value ? result : std::vector<std::uint32_t>{};
    const int origin = trail.origin(needed);
    if (origin < 0 || trail[origin].reason.kind != Reason::arc) break;
    index = trail[origin].reason.data;
  }
  return {};
}

bool Arcs::follow_conditioned(Trail& trail, std::uint32_t index, Literal implied) const {
  const Arc& arc = arcs_[index];
  const Conditions& conditions = conditions_[at(arc.conditions)];
  const Literal* open = nullptr;
  for (const Literal& condition : conditions) {
    if (trail.holds(condition)) continue;
    if (open != nullptr || trail.fails(condition)) return true;
    open = &condition;
  }
  if (open == nullptr) return move(trail, index, implied);
  if (!trail.fails(trail.tight(implied))) return true;
  const Literal least = trail.loose({arc.to, 1 - trail.bound(arc.to ^ 1)});  // the least value that is too much
  std::vector<Literal> because{{arc.from, preimage(arc, least.value)}, !least};
  for (const Literal& condition : conditions) {
    if (&condition != open) because.push_back(condition);
  }
  return trail.set(!*open, because);
}

bool Arcs::propagate(Trail& trail, BoundVar moved) {
  for (const std::uint32_t arc : out_[at(moved)]) {
    if (!follow(trail, arc)) return false;
  }
  for (const std::uint32_t arc : conditioned_[at(moved)]) {
    if (!follow(trail, arc)) return false;
  }
  return true;
}

bool Arcs::propagate_all(Trail& trail) {
  for (std::uint32_t arc = 0; arc < arcs_.size(); ++arc) {
    if (!follow(trail, arc)) return false;
  }
  return true;
}

void Arcs::tidy(const Trail& trail) {
  const auto needless = [&](std::uint32_t index) {
    const int c = arcs_[index].conditions;
    if (c < 0) return false;
    const Conditions& conditions = conditions_[at(c)];
    return std::any_of(conditions.begin(), conditions.end(), [&](Literal l) { return trail.fails(l); });
  };
  for (auto& list : out_) std::erase_if(list, needless);
  for (auto& list : conditioned_) std::erase_if(list, needless);
  for (Arc& arc : arcs_) {
    if (arc.conditions < 0) continue;
    const Conditions& conditions = conditions_[at(arc.conditions)];
    if (std::all_of(conditions.begin(), conditions.end(), [&](Literal l) { return trail.holds(l); })) arc.conditions = -1;
  }
}

void Arcs::explain(std::uint32_t index, Literal l, std::vector<Literal>& because) const {
  const Arc& arc = arcs_[index];
  because.push_back({arc.from, preimage(arc, l.value)});
  if (arc.conditions < 0) return;
  const Conditions& conditions = conditions_[at(arc.conditions)];
  because.insert(because.end(), conditions.begin(), conditions.end());
}

}  // namespace coatday::solver::clause_learning
