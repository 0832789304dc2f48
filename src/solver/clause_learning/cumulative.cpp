#include "solver/clause_learning/cumulative.h"

#include <algorithm>

namespace coatday::solver::clause_learning {

Cumulative::Cumulative(const std::vector<int>& capacities, std::vector<Use> uses, Time first, Time last)
    : uses_(std::move(uses)), states_(uses_.size()), first_(first), last_(last) {
  for (const int capacity : capacities) {
    Load load;
    load.capacity = capacity;
    load.level.assign(at(last - first), 0);
    loads_.push_back(std::move(load));
  }
  for (int u = 0; u < static_cast<int>(uses_.size()); ++u) {
    for (const Demand& d : uses_[at(u)].demands) {
      loads_[at(d.resource)].uses.push_back(u);
      loads_[at(d.resource)].amounts.push_back(d.amount);
    }
    states_[at(u)].from = states_[at(u)].to = first;
    wake(u);
  }
}

void Cumulative::wake(int use) {
  if (states_[at(use)].touched) return;
  states_[at(use)].touched = true;
  touched_.push_back(use);
}

bool Cumulative::propagate(Trail& trail) {
  for (const int use : touched_) {
    read(trail, use);
    if (!extend(trail, use)) return false;
  }
  for (int r = 0; r < static_cast<int>(loads_.size()); ++r) {
    if (!sweep(trail, r)) return false;
  }
  for (const int use : touched_) {
    states_[at(use)].touched = false;
    for (const Demand& d : uses_[at(use)].demands) {
      if (!filter(trail, use, d.resource, d.amount)) return false;
    }
  }
  touched_.clear();
  return true;
}

void Cumulative::back(int level) {
  for (const int use : touched_) states_[at(use)].touched = false;
  touched_.clear();
  for (Load& load : loads_) load.from = load.to = load.peak = 0;
  const std::size_t length = marks_[at(level)];
  for (std::size_t i = changes_.size(); i > length; --i) {
    const Change& change = changes_[i - 1];
    State& s = states_[at(change.use)];
    remove(change.use, s.from, std::min(change.from, s.to));
    remove(change.use, std::max(change.to, s.from), s.to);
    s.from = change.from;
    s.to = change.to;
  }
  changes_.resize(length);
  marks_.resize(at(level));
}

void Cumulative::read(const Trail& trail, int use) {
  const Use& u = uses_[at(use)];
  State& s = states_[at(use)];
  s.certain = std::all_of(u.conditions.begin(), u.conditions.end(), [&](Literal l) { return trail.holds(l); });
  s.possible = std::none_of(u.conditions.begin(), u.conditions.end(), [&](Literal l) { return trail.fails(l); });
  s.earliest = trail.low(u.begin);
  s.latest = trail.high(u.begin);
  s.ends_after = s.ends_by = unreachable;
  for (const Ending& e : u.endings) {
    const bool present = e.absent < 0 || trail.holds(yes(e.absent));
    if (!present && trail.holds(no(e.absent))) continue;
    s.ends_after = std::min(s.ends_after, e.f.at(trail.low(e.x)));
    if (present) s.ends_by = std::min(s.ends_by, e.f.at(trail.high(e.x)));
  }
}

bool Cumulative::extend(Trail& trail, int use) {
  State& s = states_[at(use)];
  const Time from = s.latest, to = std::min(s.ends_after, last_);
  if (!s.certain || from >= to || (from == s.from && to == s.to)) return true;
  const Time old_from = s.from, old_to = s.to;
  changes_.push_back({use, old_from, old_to});
  if (old_from >= old_to) {
    s.from = s.to = from;
    return add(trail, use, from, to);
  }
  return add(trail, use, from, std::min(old_from, to)) && add(trail, use, std::max(old_to, from), to);
}

// The profile agrees with `from` and `to` even after an overload.
bool Cumulative::add(Trail& trail, int use, Time from, Time to) {
  if (from >= to) return true;
  State& s = states_[at(use)];
  s.from = std::min(s.from, from);
  s.to = std::max(s.to, to);
  int overloaded = -1;
  Time where = 0;
  for (const Demand& d : uses_[at(use)].demands) {
    Load& load = loads_[at(d.resource)];
    for (Time t = from; t < to; ++t) {
      const int level = load.level[slot(t)] += d.amount;
      load.peak = std::max(load.peak, level);
      if (level <= load.capacity) continue;
      overloaded = d.resource;
      where = t;
    }
    const bool first = load.from >= load.to;
    load.from = first ? from : std::min(load.from, from);
    load.to = first ? to : std::max(load.to, to);
  }
  if (overloaded < 0) return true;
  reason_.clear();
  cover(trail, overloaded, loads_[at(overloaded)].capacity + 1, -1, where);
  return trail.refute(reason_);
}

void Cumulative::remove(int use, Time from, Time to) {
  for (const Demand& d : uses_[at(use)].demands) {
    std::vector<int>& level = loads_[at(d.resource)].level;
    for (Time t = from; t < to; ++t) level[slot(t)] -= d.amount;
  }
}

bool Cumulative::sweep(Trail& trail, int resource) {
  Load& load = loads_[at(resource)];
  const Time from = load.from, to = load.to;
  const int peak = load.peak;
  load.from = load.to = load.peak = 0;
  if (from >= to) return true;
  for (std::size_t i = 0; i < load.uses.size(); ++i) {
    if (peak + load.amounts[i] <= load.capacity) continue;
    const State& s = states_[at(load.uses[i])];
    if (s.touched) continue;
    read(trail, load.uses[i]);  // it may have been undone since the last read
    if (s.earliest >= to || s.ends_by <= from) continue;
    if (!filter(trail, load.uses[i], resource, load.amounts[i])) return false;
  }
  return true;
}

bool Cumulative::filter(Trail& trail, int use, int resource, int amount) {
  const State& s = states_[at(use)];
  if (!s.possible) return true;
  if (!s.certain) return filter_presence(trail, use, resource, amount);
  return filter_begin(trail, use, resource, amount) && filter_end(trail, use, resource, amount);
}

bool Cumulative::filter_begin(Trail& trail, int use, int resource, int amount) {
  const Use& u = uses_[at(use)];
  const Load& load = loads_[at(resource)];
  State& s = states_[at(use)];
  Time t = std::min({s.latest, s.ends_after, last_}) - 1;
  while (t >= s.earliest) {
    if (load.level[slot(t)] + amount <= load.capacity) {
      --t;
      continue;
    }
    if (!exclude(trail, use, resource, amount, t)) return false;
    const Time before = s.earliest;
    s.earliest = trail.low(u.begin);
    if (s.earliest == before) return true;
    read(trail, use);
    t = std::min({s.latest, s.ends_after, last_}) - 1;
  }
  return true;
}

bool Cumulative::filter_end(Trail& trail, int use, int resource, int amount) {
  const Load& load = loads_[at(resource)];
  State& s = states_[at(use)];
  Time t = std::max(s.latest, s.ends_after);
  while (t < std::min(s.ends_by, last_)) {
    if (load.level[slot(t)] + amount <= load.capacity) {
      ++t;
      continue;
    }
    if (!exclude(trail, use, resource, amount, t)) return false;
    const Time latest = s.latest, by = s.ends_by;
    read(trail, use);
    if (s.latest == latest && s.ends_by == by) return true;
    t = std::max(s.latest, s.ends_after);
  }
  return true;
}

bool Cumulative::filter_presence(Trail& trail, int use, int resource, int amount) {
  const Load& load = loads_[at(resource)];
  const State& s = states_[at(use)];
  for (Time t = s.latest; t < std::min(s.ends_after, last_); ++t) {
    if (load.level[slot(t)] + amount > load.capacity) return exclude(trail, use, resource, amount, t);
  }
  return true;
}

// The use cannot cover t. It covers t if a few literals hold; if only one of them is open, that one fails.
bool Cumulative::exclude(Trail& trail, int use, int resource, int amount, Time t) {
  const Use& u = uses_[at(use)];
  std::vector<Literal> covers(u.conditions);
  covers.push_back(at_most(u.begin, t));
  const Ending* open_ending = nullptr;
  for (const Ending& e : u.endings) {
    if (e.absent >= 0 && trail.holds(no(e.absent))) {
      covers.push_back(no(e.absent));
    } else if (e.absent >= 0 && !trail.holds(yes(e.absent)) && !trail.holds(ends_later(e, t))) {
      if (open_ending != nullptr) return true;
      open_ending = &e;
    } else {
      covers.push_back(ends_later(e, t));
    }
  }
  const auto opens = std::stable_partition(covers.begin(), covers.end(), [&](Literal l) { return trail.holds(l); });
  const auto open = covers.end() - opens;
  if (open + (open_ending != nullptr ? 1 : 0) > 1) return true;
  const Load& load = loads_[at(resource)];
  reason_.assign(covers.begin(), opens);
  cover(trail, resource, load.capacity - amount + 1, use, t);
  if (open_ending != nullptr) return trail.set(yes(open_ending->absent), reason_) && trail.set(!ends_later(*open_ending, t), reason_);
  return open == 0 ? trail.refute(reason_) : trail.set(!*opens, reason_);
}

// Explains by uses that together take `needed` at t. Leaves out those that came to cover t last.
void Cumulative::cover(const Trail& trail, int resource, int needed, int without, Time t) {
  const Load& load = loads_[at(resource)];
  struct Covering {
    int use, amount, origin;
  };
  std::vector<Covering> all;
  int total = 0;
  for (std::size_t i = 0; i < load.uses.size(); ++i) {
    const int use = load.uses[i];
    const State& s = states_[at(use)];
    if (use == without || t < s.from || t >= s.to) continue;
    int origin = trail.origin(at_most(uses_[at(use)].begin, t));
    for (const Ending& e : uses_[at(use)].endings) {
      if (trail.holds(ends_later(e, t))) origin = std::max(origin, trail.origin(ends_later(e, t)));
    }
    all.push_back({use, load.amounts[i], origin});
    total += load.amounts[i];
  }
  std::stable_sort(all.begin(), all.end(), [](const Covering& a, const Covering& b) { return a.origin > b.origin; });
  for (const Covering& c : all) {
    if (total - c.amount >= needed) {
      total -= c.amount;
    } else {
      because(trail, c.use, t);
    }
  }
}

void Cumulative::because(const Trail& trail, int use, Time t) {
  const Use& u = uses_[at(use)];
  reason_.insert(reason_.end(), u.conditions.begin(), u.conditions.end());
  reason_.push_back(at_most(u.begin, t));
  for (const Ending& e : u.endings) {
    const bool absent = e.absent >= 0 && trail.holds(no(e.absent));
    reason_.push_back(absent ? no(e.absent) : ends_later(e, t));
  }
}

Literal Cumulative::ends_later(const Ending& e, Time t) { return at_least(e.x, e.f.latest(t) + 1); }

}  // namespace coatday::solver::clause_learning
