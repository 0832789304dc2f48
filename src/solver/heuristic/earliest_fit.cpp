#include "solver/heuristic/earliest_fit.h"

#include <algorithm>

#include "solver/base/calendar.h"

namespace coatday::solver {

// Each rule in turn moves the start to the next time that it allows. No start is missed: whatever moves with the start moves monotonically.
// So an obstacle for the start t is one for every start between t and the end of the obstacle.

std::optional<Candidate> EarliestFit::earliest_by_calendar(int a, bool shared, Time low) const {
  const Activity& activity = network_.activity(a);
  Time t = low;
  while (true) {
    const Time allowed = next_allowed(starts_of(activity, shared), t);
    if (allowed >= unreachable) return std::nullopt;
    t = shared ? next_sharing(a, allowed) : allowed;
    if (t >= unreachable) return std::nullopt;
    if (t > allowed) continue;
    const Time end = end_of(activity, t, shared);
    if (end > network_.problem.horizon) return std::nullopt;
    return Candidate{a, t, end, shared};
  }
}

std::optional<Candidate> EarliestFit::earliest(int a, bool shared, Time low, NoRoom& why) const {
  Time t = low;
  while (true) {
    const std::optional<Candidate> candidate = earliest_by_calendar(a, shared, t);
    if (!candidate) return std::nullopt;
    t = clear_of_resources(*candidate);
    if (t == candidate->start) t = clear_of_exclusions(*candidate);
    if (t == candidate->start) t = clear_of_holds(*candidate, why);
    if (t == candidate->start) return candidate;
    if (t >= unreachable) return std::nullopt;
  }
}

Time EarliestFit::next_sharing(int a, Time t) const {
  const Activity& activity = network_.activity(a);
  const auto& ends = partial_.ends(activity.family);
  const auto next = std::lower_bound(ends.begin(), ends.end(), std::pair{t - network_.problem.sharing_gap, -1});
  return next == ends.end() ? unreachable : std::max(t, next->first);
}

Time EarliestFit::clear_of(const Demand& demand, const Interval& time) const {
  const int spare = capacity(demand.resource) - demand.amount;
  if (spare < 0) return unreachable;
  const auto blocked = partial_.use(demand.resource).last_above(spare, time.begin, time.end);
  if (blocked) return blocked->end;
  return has_room(demand, time) ? time.begin : partial_.layout().next_end(demand.resource, time);
}

bool EarliestFit::has_room(const Demand& demand, const Interval& time) const {
  const Layout& layout = partial_.layout();
  return !layout.covers(demand.resource) || time.begin >= time.end || layout.room(demand, time);
}

bool EarliestFit::fits(const Demand& demand, const Interval& time) const { return clear_of(demand, time) == time.begin; }

Time EarliestFit::clear_of_resources(const Candidate& c) const {
  Time t = c.start;
  for (const Demand& demand : network_.demands[c.activity]) t = std::max(t, clear_of(demand, {c.start, c.end}));
  return t;
}

Time EarliestFit::clear_of_exclusions(const Candidate& c) const {
  Time t = c.start;
  for (const Carried& carried : network_.carried[c.activity]) {
    const Interval time = PartialSchedule::carried(*carried.span, c.start, c.end);
    const auto blocked = partial_.covered(carried.exclusion, !carried.right).last_above(0, time.begin, time.end);
    if (blocked) t = std::max(t, blocked->end >= unreachable ? unreachable : blocked->end + carried.span->lead);
  }
  return t;
}

Time EarliestFit::clear_of_holds(const Candidate& c, NoRoom& why) const {
  Time t = c.start;
  for (const int h : network_.holds[c.activity]) {
    const Hold& hold = network_.hold(h);
    const bool begins = hold.first == c.activity;
    if (!begins && !partial_.placed(hold.first)) continue;
    const Interval time = held(hold, c);
    Time soonest = unreachable;
    for (const Demand& choice : hold.choices) soonest = std::min(soonest, clear_of(choice, time));
    if (soonest == time.begin) continue;
    if (!begins || soonest >= unreachable) {
      if (!begins) why.hold = h;
      return unreachable;
    }
    t = std::max(t, soonest);
  }
  return t;
}

Time EarliestFit::estimate(int a, const Candidate& c) const {
  Time t = lookahead_.release[at(a)];
  if (!lookahead_.wanted.empty() && lookahead_.wanted[at(a)] < unreachable) t = std::max(t, lookahead_.wanted[at(a)]);
  for (const int i : network_.min_in[a]) {
    const MinimumLag& lag = network_.min_lag(i);
    if (lag.from.activity == c.activity) {
      t = std::max(t, value_of(lag.bound, lag.from.edge == Edge::start ? c.start : c.end));
    } else if (partial_.placed(lag.from.activity)) {
      t = std::max(t, value_of(lag.bound, partial_.point(lag.from)));
    }
  }
  return t;
}

Interval EarliestFit::held(const Hold& hold, const Candidate& c) const {
  const auto known = [&](int a) { return a == c.activity || partial_.placed(a); };
  const auto start = [&](int a) { return a == c.activity ? c.start : partial_.run(a).start; };
  Time limit = unreachable;
  if (hold.limit && known(hold.limit_from.activity)) {
    const bool mine = hold.limit_from.activity == c.activity;
    limit = hold.limit->at(!mine ? partial_.point(hold.limit_from) : hold.limit_from.edge == Edge::start ? c.start : c.end);
  }
  Time taken = unreachable, expected = unreachable;
  for (const int until : hold.until) {
    if (known(until)) {
      taken = std::min(taken, start(until));
    } else if (!network_.activity(until).optional) {
      expected = std::min(expected, estimate(until, c));
    }
  }
  Time end = limit;
  if (taken < unreachable) {
    end = std::min(end, taken);
  } else if (expected < unreachable && !(lookahead_.generous && limit < unreachable)) {
    end = std::min(end, expected);
  } else if (hold.until.empty() && hold.limit && !known(hold.limit_from.activity) &&
             !network_.activity(hold.limit_from.activity).optional) {
    end = start(hold.first);  // extended once the limit is known
  }
  return {start(hold.first), end};
}

int EarliestFit::choose(const Hold& hold, const Interval& time) const {
  int best = -1;
  Time best_free = -unreachable;
  for (int i = 0; i < static_cast<int>(hold.choices.size()); ++i) {
    const Demand& choice = hold.choices[at(i)];
    if (!fits(choice, time)) continue;
    const auto next = partial_.use(choice.resource)
                          .first_above(capacity(choice.resource) - choice.amount, std::max(time.begin, time.end - 1), unreachable);
    const Time until = next ? next->begin : unreachable;
    if (until > best_free) {
      best = i;
      best_free = until;
    }
  }
  return best;
}

}  // namespace coatday::solver
