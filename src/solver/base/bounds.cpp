#include "solver/base/bounds.h"

#include <algorithm>

#include "solver/base/calendar.h"

namespace coatday::solver {

Bounds::Bounds(const Network& network, std::optional<Tags> only) : network_(&network), only_(std::move(only)), branches_(network) {
  if (only_) std::sort(only_->begin(), only_->end());
  for (const Side side : {earliest_side, latest_side}) {
    value_[side].resize(at(network.size));
    reason_[side].resize(at(network.size));
    queued_[side].assign(at(network.size), 0);
  }
  for (int a = 0; a < network.size; ++a) begin(a);
}

bool Bounds::counts(Tag tag) const { return tag < 0 || !only_ || std::binary_search(only_->begin(), only_->end(), tag); }

// Without its calendar, an activity may start at any time from the origin, or from its first allowed start if that is earlier.
void Bounds::begin(int a) {
  const Activity& activity = network_->activity(a);
  const Time origin = network_->problem.origin;
  Time first = activity.starts.empty() ? origin : std::min(origin, activity.starts.front().begin);
  if (may_share(activity) && !activity.starts_shared.empty()) first = std::min(first, activity.starts_shared.front().begin);
  const Tag calendar = counts(activity.tag) ? activity.tag : -1;
  for (const Side side : {earliest_side, latest_side}) {
    reason_[side][at(a)] = events_.add({-1, -1, calendar});
    enqueue(side, a);
  }
  value_[earliest_side][at(a)] = snapped(earliest_side, a, first);
  begin_latest(a);
  if (earliest(a) > latest(a)) cross(a);
  if (network_->alternative[at(a)] >= 0) close_what_has_no_room(a);
}

void Bounds::cross(int a) {
  if (network_->certain(a)) crossed_ = a;
  if (network_->alternative[at(a)] >= 0) close(a, events_.add({reason_[earliest_side][at(a)], -1, -1, reason_[latest_side][at(a)]}));
}

void Bounds::begin_latest(int a) {
  const Activity& activity = network_->activity(a);
  const Time horizon = network_->problem.horizon;
  const Time low = earliest(a);
  const Time high = std::min(horizon, snapped(latest_side, a, horizon));
  Time latest = latest_of(activity.end, horizon, low, high);
  if (may_share(activity)) latest = std::max(latest, latest_of(activity.end_shared, horizon, low, high));
  value_[latest_side][at(a)] = latest < low ? latest : snapped(latest_side, a, latest);
}

Time Bounds::snapped(Side side, int a, Time t) const {
  const Activity& activity = network_->activity(a);
  if (!counts(activity.tag)) return t;
  const bool two = may_share(activity) && !activity.starts_shared.empty();
  if (side == earliest_side) {
    const Time next = next_allowed(activity.starts, t);
    return two ? std::min(next, next_allowed(activity.starts_shared, t)) : next;
  }
  const Time previous = previous_allowed(activity.starts, t);
  return two ? std::max(previous, previous_allowed(activity.starts_shared, t)) : previous;
}

void Bounds::set(Side side, int a, Time t, Tag tag, int source) {
  ++work_;
  const bool tighter = side == earliest_side ? t > earliest(a) : t < latest(a);
  if (!tighter || branches_.gone(a)) return;
  const Time value = snapped(side, a, t);
  value_[side][at(a)] = value;
  reason_[side][at(a)] = events_.add({source, tag, value == t ? -1 : network_->activity(a).tag});
  if (network_->activity(a).optional) return;
  if (earliest(a) > latest(a)) cross(a);
  enqueue(side, a);
}

void Bounds::enqueue(Side side, int a) {
  if (queued_[side][at(a)] != 0) return;
  queued_[side][at(a)] = 1;
  queue_[side].push({side == earliest_side ? network_->stage[at(a)] : -network_->stage[at(a)], turn_++, a});
}

void Bounds::start_by(int a, Time latest) { set(latest_side, a, latest, -1, -1); }

void Bounds::start_from(int a, Time earliest) { set(earliest_side, a, earliest, -1, -1); }

// The two sides do not feed each other. Stages go one by one: a cycle comes to rest, or leaves the horizon, before the stages after it.
bool Bounds::propagate(long most_work) {
  const long until = most_work > std::numeric_limits<long>::max() - work_ ? most_work : work_ + most_work;
  for (const Side side : {earliest_side, latest_side}) {
    while (!queue_[side].empty() && crossed_ < 0 && work_ < until) {
      const int a = queue_[side].top().activity;
      queue_[side].pop();
      queued_[side][at(a)] = 0;
      if (!network_->activity(a).optional && !branches_.gone(a)) spread(side, a);
    }
  }
  return crossed_ < 0;
}

void Bounds::spread(Side side, int a) {
  const bool up = side == earliest_side;
  for (const int i : up ? network_->min_out[a] : network_->min_in[a]) {
    const MinimumLag& lag = network_->min_lag(i);
    if (counts(lag.tag)) give(side, up ? lag.to : lag.from.activity, by(side, lag), lag.tag, a);
  }
  for (const int i : up ? network_->max_in[a] : network_->max_out[a]) {
    const MaximumLag& lag = network_->max_lag(i);
    if (network_->force[at(i)] == Force::hard && counts(lag.tag)) give(side, up ? lag.from.activity : lag.to, by(side, lag), lag.tag, a);
  }
}

void Bounds::give(Side side, int to, Time value, Tag tag, int from) {
  if (network_->implies(to, from)) return set(side, to, value, tag, reason_[side][at(from)]);
  give_by_branches(side, to, network_->alternative[at(from)]);
}

// The bound that a lag gives at its other end.
Time Bounds::by(Side side, const MinimumLag& lag) const {
  if (side == earliest_side) return value_of(lag.bound, soonest(lag.from, earliest(lag.from.activity)));
  return latest_soonest(lag.from, lag.bound, latest(lag.to));
}

Time Bounds::by(Side side, const MaximumLag& lag) const {
  if (side == latest_side) return value_of(lag.bound, last(lag.from, latest(lag.from.activity)));
  return latest_last(lag.from, lag.bound, earliest(lag.to) - 1) + 1;
}

Time Bounds::soonest(const Point& point, Time start) const {
  const Activity& a = network_->activity(point.activity);
  const Time alone = value_of(a, point.edge, start, false);
  return may_share(a) ? std::min(alone, value_of(a, point.edge, start, true)) : alone;
}

Time Bounds::last(const Point& point, Time start) const {
  const Activity& a = network_->activity(point.activity);
  const Time alone = value_of(a, point.edge, start, false);
  return may_share(a) ? std::max(alone, value_of(a, point.edge, start, true)) : alone;
}

// The latest start within the bounds with bound(point) <= value.
Time Bounds::inverse(const Point& point, const Function& bound, bool shared, Time value) const {
  const Activity& a = network_->activity(point.activity);
  const Time low = earliest(point.activity), high = latest(point.activity);
  if (high < low) return low - 1;
  const Time reach = latest_of(bound, value, value_of(a, point.edge, low, shared), value_of(a, point.edge, high, shared));
  return latest_of(a, point.edge, shared, reach, low, high);
}

Time Bounds::latest_soonest(const Point& point, const Function& bound, Time value) const {
  const Time alone = inverse(point, bound, false, value);
  return may_share(network_->activity(point.activity)) ? std::max(alone, inverse(point, bound, true, value)) : alone;
}

Time Bounds::latest_last(const Point& point, const Function& bound, Time value) const {
  const Time alone = inverse(point, bound, false, value);
  return may_share(network_->activity(point.activity)) ? std::min(alone, inverse(point, bound, true, value)) : alone;
}

// Closes every branch with the activity. What follows from the other branches must be computed again.
void Bounds::close(int a, int because) {
  const int alternative = network_->alternative[at(a)];
  const auto [news, any_open] = branches_.close(a, because);
  if (!any_open && counts(network_->problem.alternatives[at(alternative)].tag)) crossed_ = a;
  if (!news || !any_open) return;
  for (const Branch& branch : network_->branches_of(alternative)) {
    for (const int other : branch) {
      enqueue(earliest_side, other);
      enqueue(latest_side, other);
    }
  }
}

void Bounds::close_what_has_no_room(int a) {
  const std::vector<Resource>& resources = network_->problem.resources;
  const auto too_much = [&](const Demand& d) {
    const Resource& r = resources[at(d.resource)];
    return d.amount > r.capacity && counts(r.tag);
  };
  for (const Demand& demand : network_->demands[a]) {
    if (too_much(demand)) return close(a, events_.add({-1, resources[at(demand.resource)].tag, -1}));
  }
  for (const int h : network_->holds[a]) {
    const Hold& hold = network_->hold(h);
    if (hold.first != a || !counts(hold.tag) || !std::all_of(hold.choices.begin(), hold.choices.end(), too_much)) continue;
    int because = events_.add({-1, hold.tag, -1});
    for (const Demand& choice : hold.choices) because = events_.add({because, resources[at(choice.resource)].tag, -1});
    return close(a, because);
  }
}

// The tightest bound that activities of the branch give.
std::optional<Bounds::Pull> Bounds::strongest(Side side, int to, const Branch& branch) const {
  const bool up = side == earliest_side;
  std::optional<Pull> result;
  const auto consider = [&](const auto& lag, int from) {
    if (!counts(lag.tag) || !stands_in(from, branch)) return;
    const Time value = by(side, lag);
    if (!result || (up ? value > result->value : value < result->value)) result = Pull{value, lag.tag, from};
  };
  for (const int i : up ? network_->min_in[to] : network_->min_out[to]) {
    const MinimumLag& lag = network_->min_lag(i);
    consider(lag, up ? lag.from.activity : lag.to);
  }
  for (const int i : up ? network_->max_out[to] : network_->max_in[to]) {
    const MaximumLag& lag = network_->max_lag(i);
    if (network_->force[at(i)] == Force::hard) consider(lag, up ? lag.to : lag.from.activity);
  }
  return result;
}

// The weakest of the bounds that the open branches give. Counts only branches in which `to` itself can take part.
void Bounds::give_by_branches(Side side, int to, int alternative) {
  const Tag tag = network_->problem.alternatives[at(alternative)].tag;
  if (!counts(tag)) return;
  std::vector<Pull> pulls;
  std::optional<Time> weakest;
  for (int w = network_->first_branch[at(alternative)]; w < network_->first_branch[at(alternative) + 1]; ++w) {
    const Branch& branch = network_->branches[at(w)];
    if (!open(w) || (network_->alternative[at(to)] == alternative && !stands_in(to, branch))) continue;
    const std::optional<Pull> pull = strongest(side, to, branch);
    if (!pull) return;
    pulls.push_back(*pull);
    weakest = !weakest ? pull->value : side == earliest_side ? std::min(*weakest, pull->value) : std::max(*weakest, pull->value);
  }
  if (!weakest || (side == earliest_side ? *weakest <= earliest(to) : *weakest >= latest(to))) return;
  int because = -1;
  for (int w = network_->first_branch[at(alternative)]; w < network_->first_branch[at(alternative) + 1]; ++w) {
    if (!open(w)) because = events_.add({branches_.reason(w), -1, -1, because});
  }
  for (const Pull& pull : pulls) because = events_.add({reason_[side][at(pull.from)], pull.tag, -1, because});
  set(side, to, *weakest, tag, because);
}

Tags Bounds::reasons() const {
  Tags result;
  Tags seen;
  const auto tell = [&](Tag tag) {
    const auto place = std::lower_bound(seen.begin(), seen.end(), tag);
    if (tag < 0 || (place != seen.end() && *place == tag)) return;
    seen.insert(place, tag);
    result.push_back(tag);
  };
  const auto tell_up = [&](int to) {
    std::vector<BoundEvents::Event> up = events_.grounds(to);
    std::reverse(up.begin(), up.end());
    for (const BoundEvents::Event& event : up) {
      tell(event.requirement);
      tell(event.calendar);
    }
  };
  if (const int alternative = network_->alternative[at(crossed_)]; alternative >= 0) {
    for (int w = network_->first_branch[at(alternative)]; w < network_->first_branch[at(alternative) + 1]; ++w)
      tell_up(branches_.reason(w));
    tell(network_->problem.alternatives[at(alternative)].tag);
    return result;
  }
  tell_up(reason_[earliest_side][at(crossed_)]);
  for (const BoundEvents::Event& event : events_.grounds(reason_[latest_side][at(crossed_)])) {
    tell(event.calendar);
    tell(event.requirement);
  }
  return result;
}

}  // namespace coatday::solver
