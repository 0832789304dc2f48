#include "solver/heuristic/repair.h"

#include <algorithm>

namespace coatday::solver {

void Repair::take_out(int a) {
  ++all_failures_;
  stuck_ = a;
  unschedule(a);
}

void Repair::unschedule(int a) {
  if (!partial_.placed(a)) return;
  queue_.forget_seen();
  const Time end = partial_.run(a).end;
  partial_.remove(a);
  for (const int h : network_.holds[a]) {
    if (network_.hold(h).first == a) partial_.lift(h);
  }
  drop_remedies(a);
  for (const int i : network_.remedied[a]) {
    if (!state_.remedy_used[at(i)]) continue;
    state_.remedy_used[at(i)] = 0;
    unschedule(network_.max_lag(i).to);
  }
  for (const int i : network_.max_out[a]) {
    if (state_.remedy_used[at(i)]) {
      unschedule(network_.max_lag(i).to);
      stop_remedy(i);
    }
  }
  for (const int i : network_.min_out[a]) {
    const MinimumLag& lag = network_.min_lag(i);
    if (network_.precedence(lag)) ++state_.unplaced_predecessors[at(lag.to)];
    if (network_.precedence(lag) || network_.activity(a).optional) unschedule(lag.to);
  }
  if (network_.activity(a).family >= 0) unshare(network_.activity(a).family, end);
  queue_.push(a);
}

// What shared the set-up of the one that ended then, and has no other to share with.
void Repair::unshare(int family, Time end) {
  for (const int other : network_.families[family]) {
    const bool near =
        partial_.placed(other) && partial_.run(other).start >= end && partial_.run(other).start <= end + network_.problem.sharing_gap;
    if (near && partial_.run(other).shared && !partial_.sharing(other, partial_.run(other).start)) unschedule(other);
  }
}

void Repair::stop_remedy(int lag) {
  if (!state_.remedy_used[at(lag)]) return;
  state_.remedy_used[at(lag)] = 0;
  const int remedy = *network_.max_lag(lag).remedy;
  const auto& others = network_.remedied[remedy];
  if (std::none_of(others.begin(), others.end(), [this](int i) { return state_.remedy_used[at(i)] != 0; })) unschedule(remedy);
}

void Repair::drop_remedies(int a) {
  for (const int i : network_.max_in[a]) stop_remedy(i);
}

bool Repair::resolve(int a, const Proposal& proposal) {
  note_blockers(a, proposal);
  stuck_ = a;
  if (++failures_[at(a)] > state_.settings.patience_each || ++all_failures_ > state_.settings.patience_all) return false;
  bool stuck = !proposal.candidate && proposal.why.hold < 0;
  bool moved = keep_lags(a, proposal, stuck);
  if (proposal.why.hold >= 0 && !proposal.candidate) moved = keep_hold(proposal.why.hold, a);
  if (stuck && make_way(a, 0)) moved = true;
  if (moved) queue_.push(a);
  return moved;
}

// Moves or takes out what the candidate would break. Sets `stuck` if something cannot move.
bool Repair::keep_lags(int a, const Proposal& proposal, bool& stuck) {
  bool moved = false;
  if (proposal.late) stuck = true;
  for (const int i : proposal.missed) {
    const bool kept = keep_window(i, proposal.candidate->start);
    const bool soft = network_.force[at(i)] == Force::soft;
    if (soft) state_.firmness[at(i)] = kept ? state_.firmness[at(i)] - 1 : 0;
    (kept || soft ? moved : stuck) = true;
  }
  for (const int i : proposal.overtaken) (delay_follower(i, *proposal.candidate) ? moved : stuck) = true;
  for (const int i : proposal.outrun) {
    unschedule(network_.max_lag(i).to);
    moved = true;
  }
  if (proposal.candidate || proposal.why.hold >= 0) return moved;
  for (const int i : network_.max_out[a]) {
    if (!partial_.placed(network_.max_lag(i).to)) continue;
    unschedule(network_.max_lag(i).to);
    moved = true;
  }
  return moved;
}

// Lags in a cycle go against the order. Such a follower would come back to its old place before the candidate, unless it may start only
// later.
bool Repair::delay_follower(int i, const Candidate& c) {
  const MinimumLag& lag = network_.min_lag(i);
  if (!network_.precedence(lag)) {
    const Time release = value_of(lag.bound, lag.from.edge == Edge::start ? c.start : c.end);
    if (release > state_.bounds.latest(lag.to)) return false;
    state_.lookahead.release[at(lag.to)] = std::max(state_.lookahead.release[at(lag.to)], release);
  }
  unschedule(lag.to);
  return true;
}

// Lets the lag's `from` start only so late that `to` may start at `start`.
bool Repair::keep_window(int i, Time start) {
  const MaximumLag& lag = network_.max_lag(i);
  const int from = lag.from.activity;
  const Activity& activity = network_.activity(from);
  const bool shared = partial_.placed(from) && partial_.run(from).shared;
  const Time low = state_.bounds.earliest(from), high = state_.bounds.latest(from);
  if (high < low) return false;
  const Time reach =
      latest_of(lag.bound, start - 1, value_of(activity, lag.from.edge, low, shared), value_of(activity, lag.from.edge, high, shared));
  const Time release = latest_of(activity, lag.from.edge, shared, reach, low, high) + 1;
  if (release > high) return false;
  state_.lookahead.release[at(from)] = std::max(state_.lookahead.release[at(from)], release);
  unschedule(from);
  return true;
}

// The hold cannot last until the activity. Takes out what was placed after the hold began, or else moves its begin later.
bool Repair::keep_hold(int h, int a) {
  const Hold& hold = network_.hold(h);
  const int first = hold.first;
  const std::optional<Candidate> c = state_.fit.earliest_by_calendar(a, false, state_.lower_bound(a, false));
  if (!c) return make_way(a, 0);
  const PartialSchedule::Reserved was = partial_.lift(h);
  const Interval time = state_.fit.held(hold, *c);
  const Demand& choice = hold.choices[at(std::max(was.choice, 0))];
  const int turn = partial_.turn(first);
  bool moved = evict(choice, time, a, turn);
  if (!state_.fit.fits(choice, time)) {
    const auto blocked = partial_.use(choice.resource)
                             .last_above(network_.problem.resources[at(choice.resource)].capacity - choice.amount, time.begin, time.end);
    if (blocked && blocked->end <= state_.bounds.latest(first)) {
      state_.lookahead.release[at(first)] = std::max(state_.lookahead.release[at(first)], blocked->end);
      unschedule(first);
      moved = true;
    } else {
      moved = evict(choice, time, a, -1) || moved;
    }
  }
  if (partial_.placed(first) && partial_.reserved(h).choice < 0) partial_.reserve(h, was);
  return moved;
}

// Clears the earliest place that lags and calendar allow. If that is too late, makes way for the predecessor that it waits for.
bool Repair::make_way(int a, int depth) {
  const std::optional<Candidate> c = state_.fit.earliest_by_calendar(a, false, state_.lower_bound(a, false));
  if (c && c->start <= state_.bounds.latest(a) && make_way_at(*c)) return true;
  return depth < 100 && make_way_for_predecessor(a, depth);
}

bool Repair::make_way_at(const Candidate& c) {
  bool moved = false;
  for (const Demand& demand : network_.demands[c.activity]) moved = evict(demand, {c.start, c.end}, c.activity, -1) || moved;
  moved = evict_excluded(c) || moved;
  for (const int h : network_.holds[c.activity]) {
    const Hold& hold = network_.hold(h);
    if (hold.first != c.activity || hold.choices.empty()) continue;
    const Interval time = state_.fit.held(hold, c);
    if (state_.fit.choose(hold, time) < 0) moved = evict(hold.choices.front(), time, c.activity, -1) || moved;
  }
  return moved;
}

bool Repair::make_way_for_predecessor(int a, int depth) {
  int latest = -1;
  Time latest_bound = state_.lookahead.release[at(a)];
  for (const int i : network_.min_in[a]) {
    const MinimumLag& lag = network_.min_lag(i);
    if (!partial_.placed(lag.from.activity) || state_.fixed(lag.from.activity)) continue;
    const Time bound = value_of(lag.bound, partial_.point(lag.from));
    if (bound <= latest_bound) continue;
    latest_bound = bound;
    latest = lag.from.activity;
  }
  if (latest < 0) return false;
  unschedule(latest);
  return make_way(latest, depth + 1);
}

// Where the resource has too little left, or no free stretch.
std::optional<Interval> Repair::crowded(const Demand& demand, int spare, const Interval& time) const {
  if (const auto blocked = partial_.use(demand.resource).first_above(spare, time.begin, time.end)) {
    return Interval{std::max(time.begin, blocked->begin), std::min(time.end, blocked->end)};
  }
  return state_.fit.has_room(demand, time) ? std::nullopt : std::optional(time);
}

// Takes out users of the resource, lowest priority first, until there is room. Returns whether it took anything out.
bool Repair::evict(const Demand& demand, const Interval& time, int protect, int after_turn) {
  bool moved = false;
  const int spare = network_.problem.resources[at(demand.resource)].capacity - demand.amount;
  while (const auto blocked = crowded(demand, spare, time)) {
    const int next = evictable(demand, *blocked, protect, after_turn);
    if (next < 0) return moved;
    unschedule(next);
    moved = true;
  }
  return moved;
}

int Repair::evictable(const Demand& demand, const Interval& time, int protect, int after_turn) const {
  int best = -1;
  const auto consider = [&](int a, const Interval& used) {
    if (used.begin >= time.end || used.end <= time.begin || a == protect || state_.fixed(a) || partial_.turn(a) <= after_turn) return;
    if (best < 0 || state_.before(best, a)) best = a;
  };
  for (const int a : network_.users[demand.resource]) {
    if (partial_.placed(a)) consider(a, {partial_.run(a).start, partial_.run(a).end});
  }
  for (const int h : network_.holders[demand.resource]) {
    const PartialSchedule::Reserved& reserved = partial_.reserved(h);
    if (reserved.choice < 0 || network_.hold(h).choices[at(reserved.choice)].resource != demand.resource) continue;
    consider(network_.hold(h).first, reserved.time);
  }
  return best;
}

bool Repair::evict_excluded(const Candidate& c) {
  bool moved = false;
  for (const Carried& carried : network_.carried[c.activity]) {
    const Interval time = PartialSchedule::carried(*carried.span, c.start, c.end);
    if (!partial_.covered(carried.exclusion, !carried.right).last_above(0, time.begin, time.end)) continue;
    const Exclusion& exclusion = network_.problem.exclusions[at(carried.exclusion)];
    for (const Span& span : carried.right ? exclusion.left : exclusion.right) {
      if (!partial_.placed(span.activity) || span.activity == c.activity || state_.fixed(span.activity)) continue;
      const Interval other = PartialSchedule::carried(span, partial_.run(span.activity).start, partial_.run(span.activity).end);
      if (other.begin >= other.end || other.begin >= time.end || other.end <= time.begin) continue;
      unschedule(span.activity);
      moved = true;
    }
  }
  return moved;
}

void Repair::note_blockers(int a, const Proposal& proposal) {
  failure_counts_.note(a);
  for (const int i : proposal.missed) failure_counts_.note(a, network_.max_lag(i).tag);
  for (const int i : proposal.overtaken) failure_counts_.note(a, network_.min_lag(i).tag);
  if (proposal.why.hold >= 0) failure_counts_.note(a, network_.hold(proposal.why.hold).tag);
  const std::optional<Candidate> c = state_.fit.earliest_by_calendar(a, false, state_.lower_bound(a, false));
  if (!c || c->start > state_.bounds.latest(a)) return failure_counts_.note(a, network_.activity(a).tag);
  for (const Demand& demand : network_.demands[a]) {
    if (!state_.fit.fits(demand, {c->start, c->end})) failure_counts_.note(a, network_.problem.resources[at(demand.resource)].tag);
  }
  for (const Carried& carried : network_.carried[a]) {
    const Interval time = PartialSchedule::carried(*carried.span, c->start, c->end);
    if (partial_.covered(carried.exclusion, !carried.right).last_above(0, time.begin, time.end)) {
      failure_counts_.note(a, network_.problem.exclusions[at(carried.exclusion)].tag);
    }
  }
  for (const int h : network_.holds[a]) {
    const Hold& hold = network_.hold(h);
    if (hold.first == a && state_.fit.choose(hold, state_.fit.held(hold, *c)) < 0) failure_counts_.note(a, hold.tag);
  }
}

}  // namespace coatday::solver
