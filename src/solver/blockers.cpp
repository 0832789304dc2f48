#include "solver/blockers.h"

#include <algorithm>

#include "solver/base/calendar.h"

namespace coatday::solver {
namespace {

bool overlap(const Interval& a, const Interval& b) { return a.begin < b.end && b.begin < a.end; }

void widen(Blocker& blocker, int activity, const Interval& time) {
  if (blocker.activities.empty()) {
    blocker.from = time.begin;
    blocker.until = time.end;
  }
  blocker.from = std::min(blocker.from, time.begin);
  blocker.until = std::max(blocker.until, time.end);
  blocker.activities.push_back(activity);
}

}  // namespace

Blockers::Blockers(const Problem& problem, const Schedule& schedule)
    : network_(problem), partial_(network_), fit_(network_, partial_, lookahead_) {
  lookahead_.release.assign(at(network_.size), problem.origin);
  for (int a = 0; a < network_.size; ++a) {
    const Assignment& run = schedule.activities[at(a)];
    if (run.present) partial_.place({a, run.start, run.end, run.shared});
  }
  for (int h = 0; h < static_cast<int>(problem.holds.size()); ++h) {
    if (partial_.placed(network_.hold(h).first))
      partial_.reserve(h, {schedule.hold_choice[at(h)], fit_.held(network_.hold(h), {}), schedule.hold_stretch[at(h)]});
  }
}

Blockers::TakenOut Blockers::take_out(int a) {
  TakenOut out{a, partial_.run(a), {}};
  for (const int h : network_.holds[a]) {
    if (partial_.reserved(h).choice >= 0) out.holds.emplace_back(h, partial_.lift(h));
  }
  partial_.remove(a);
  return out;
}

void Blockers::put_back(const TakenOut& out) {
  partial_.place({out.activity, out.run.start, out.run.end, out.run.shared});
  for (const auto& [hold, reserved] : out.holds) partial_.reserve(hold, reserved);
}

Time Blockers::released(int a) const {
  Time t = network_.problem.origin;
  for (const int i : network_.min_in[a]) {
    const MinimumLag& lag = network_.min_lag(i);
    if (partial_.placed(lag.from.activity)) t = std::max(t, value_of(lag.bound, partial_.point(lag.from)));
  }
  return t;
}

Time Blockers::first_open(int a, Time t) const { return next_allowed(network_.activity(a).starts, t); }

Time Blockers::last_open(int a, Time t) const {
  const Activity& activity = network_.activity(a);
  Time last = previous_allowed(activity.starts, t);
  if (!may_share(activity)) return last;
  for (const auto& [end, other] : partial_.ends(activity.family)) {
    if (other == a || end > t) continue;
    const Time shared = previous_allowed(starts_of(activity, true), std::min(t, end + network_.problem.sharing_gap));
    if (shared >= end) last = std::max(last, shared);
  }
  return last;
}

// Shared first: it takes less.
std::vector<Candidate> Blockers::candidates(int a, Time start) const {
  const Activity& activity = network_.activity(a);
  std::vector<Candidate> result;
  for (const bool shared : {true, false}) {
    if (shared && (!may_share(activity) || !partial_.sharing(a, start))) continue;
    if (previous_allowed(starts_of(activity, shared), start) == start)
      result.push_back({a, start, end_of(activity, start, shared), shared});
  }
  return result;
}

std::vector<Blocker> Blockers::failing(int a, Time start) {
  was_ = partial_.run(a).start;
  const TakenOut out = take_out(a);
  std::vector<Blocker> first;
  for (const Candidate& candidate : candidates(a, start)) {
    std::vector<Blocker> found = blockers_of(candidate);
    if (found.empty()) first.clear();
    if (first.empty()) first = found;
    if (found.empty()) break;
  }
  put_back(out);
  return first;
}

// What is in the way of one start is in the way of all until it ends, but a limit or a set-up may be so for any time.
Time Blockers::soonest(int a, Time from, Time last) {
  constexpr int most_steps = 300;
  Time t = first_open(a, from);
  for (int step = 0; step < most_steps && t < last; ++step) {
    const std::vector<Blocker> found = failing(a, t);
    if (found.empty()) return t;
    Time next = t + 1;
    for (const Blocker& blocker : found) {
      const bool moves = blocker.rule != Blocker::Rule::limit && blocker.rule != Blocker::Rule::set_up;
      if (moves && blocker.activities.size() == 1) next = std::max(next, std::min(blocker.until, last));
    }
    t = first_open(a, next);
  }
  return std::min(t, last);
}

Follower Blockers::follower(int a, Time start, const Blocker& limit) {
  const int follows = limit.activities.front();
  Follower result{limit.until, std::nullopt, {}};
  was_ = partial_.run(follows).start;
  std::vector<TakenOut> out{take_out(a), take_out(follows)};
  partial_.place(candidates(a, start).front());
  std::vector<int> between;  // each as soon after the activity as can be
  for (const int i : network_.min_in[follows]) {
    const int b = network_.min_lag(i).from.activity;
    const auto outgoing = network_.min_out[a];
    const bool after = std::any_of(outgoing.begin(), outgoing.end(), [&](int lag) { return network_.min_lag(lag).to == b; });
    if (!after || !partial_.placed(b)) continue;
    out.push_back(take_out(b));
    NoRoom why;
    if (const auto soonest = fit_.earliest(b, false, released(b), why)) partial_.place(*soonest);
    between.push_back(b);
  }
  const Time open = last_open(follows, limit.until);
  if (open >= released(follows)) {
    result.last_open = open;
    const std::vector<Candidate> ways = candidates(follows, open);
    if (!ways.empty()) result.blockers = blockers_of(ways.front());
  }
  for (const int b : between) {
    if (partial_.placed(b)) partial_.remove(b);
  }
  partial_.remove(a);
  while (!out.empty()) {
    put_back(out.back());
    out.pop_back();
  }
  return result;
}

std::vector<Blocker> Blockers::blockers_of(const Candidate& c) {
  std::vector<Blocker> found;
  add_holds(c, found);
  add_demands(c, found);
  add_exclusions(c, found);
  add_limits(c, found);
  add_set_ups(c, found);
  return found;
}

/// Everything that takes some of the resource then: first what is over before the activity started, the last of it first.
std::vector<Blockers::User> Blockers::users(int resource, const Interval& time, Time preferred) const {
  std::vector<User> all;
  for (const int a : network_.users[resource]) {
    if (!partial_.placed(a)) continue;
    const Interval run{partial_.run(a).start, partial_.run(a).end};
    if (overlap(run, time)) all.push_back({a, -1, run});
  }
  for (const int h : network_.holders[resource]) {
    const PartialSchedule::Reserved& reserved = partial_.reserved(h);
    if (reserved.choice < 0 || network_.hold(h).choices[at(reserved.choice)].resource != resource) continue;
    if (overlap(reserved.time, time)) all.push_back({network_.hold(h).first, h, reserved.time});
  }
  const auto late = [preferred](const User& u) { return u.time.end > preferred; };
  std::stable_sort(all.begin(), all.end(), [&](const User& a, const User& b) {
    return late(a) != late(b) ? late(b) : late(a) ? a.time.end < b.time.end : a.time.end > b.time.end;
  });
  return all;
}

PartialSchedule::Reserved Blockers::lift(const User& user) {
  if (user.hold >= 0) return partial_.lift(user.hold);
  partial_.remove(user.activity);
  return {};
}

void Blockers::give_back(const User& user, const PartialSchedule::Reserved& reserved) {
  const Assignment run = partial_.run(user.activity);
  if (user.hold >= 0) return partial_.reserve(user.hold, reserved);
  partial_.place({user.activity, run.start, run.end, run.shared});
}

/// One of them where one is enough, else so many of the first that the others may stay. Where some were over by the start, these alone: their
/// end made it possible.
template <typename Fits>
std::vector<Blockers::User> Blockers::least(const std::vector<User>& all, const Fits& fits) {
  std::vector<std::pair<User, PartialSchedule::Reserved>> lifted;
  const auto back = [&] {
    give_back(lifted.back().first, lifted.back().second);
    lifted.pop_back();
  };
  for (const User& user : all) {
    lifted.emplace_back(user, lift(user));
    const bool enough = fits();
    back();
    if (enough) return {user};
  }
  for (const User& user : all) {
    lifted.emplace_back(user, lift(user));
    if (fits()) break;
  }
  std::vector<User> result;
  const bool over = !all.empty() && all.front().time.end <= was_;
  for (const auto& [user, reserved] : lifted) {
    if (!over || user.time.end <= was_) result.push_back(user);
  }
  while (!lifted.empty()) back();
  return result;
}

std::vector<Blockers::User> Blockers::in_the_way(const Demand& demand, const Interval& time) {
  return least(users(demand.resource, time, was_), [&] { return fit_.fits(demand, time); });
}

void Blockers::add_demands(const Candidate& c, std::vector<Blocker>& found) {
  for (const Demand& demand : network_.demands[c.activity]) {
    const Interval time{c.start, c.end};
    if (fit_.fits(demand, time)) continue;
    Blocker blocker{Blocker::Rule::demand, network_.problem.resources[at(demand.resource)].tag, {}, 0, 0};
    for (const User& user : in_the_way(demand, time)) widen(blocker, user.activity, user.time);
    found.push_back(std::move(blocker));
  }
}

void Blockers::add_holds(const Candidate& c, std::vector<Blocker>& found) {
  for (const int h : network_.holds[c.activity]) {
    const Hold& hold = network_.hold(h);
    if (hold.first != c.activity && !partial_.placed(hold.first)) continue;
    const Interval time = fit_.held(hold, c);
    if (hold.choices.empty() || fit_.choose(hold, time) >= 0) continue;
    std::optional<Blocker> fewest;
    for (const Demand& choice : hold.choices) {
      Blocker blocker{Blocker::Rule::hold, network_.problem.resources[at(choice.resource)].tag, {}, 0, 0};
      for (const User& user : in_the_way(choice, time)) widen(blocker, user.activity, user.time);
      if (!fewest || blocker.activities.size() < fewest->activities.size()) fewest = std::move(blocker);
    }
    found.push_back(*std::move(fewest));
  }
}

void Blockers::add_exclusions(const Candidate& c, std::vector<Blocker>& found) const {
  for (const Carried& carried : network_.carried[c.activity]) {
    const Interval time = PartialSchedule::carried(*carried.span, c.start, c.end);
    if (!partial_.covered(carried.exclusion, !carried.right).last_above(0, time.begin, time.end)) continue;
    const Exclusion& exclusion = network_.problem.exclusions[at(carried.exclusion)];
    Blocker blocker{Blocker::Rule::exclusion, exclusion.tag, {}, 0, 0};
    for (const Span& span : carried.right ? exclusion.left : exclusion.right) {
      if (span.activity == c.activity || !partial_.placed(span.activity)) continue;
      const Assignment& run = partial_.run(span.activity);
      const Interval other = PartialSchedule::carried(span, run.start, run.end);
      if (overlap(other, time)) widen(blocker, span.activity, {run.start, other.end + carried.span->lead});
    }
    found.push_back(std::move(blocker));
  }
}

void Blockers::add_limits(const Candidate& c, std::vector<Blocker>& found) const {
  for (const int i : network_.max_out[c.activity]) {
    const MaximumLag& lag = network_.max_lag(i);
    const Force force = network_.force[at(i)];
    if (force == Force::none || !partial_.placed(lag.to)) continue;
    if (force == Force::soft && partial_.placed(*lag.remedy)) continue;
    const Time latest = value_of(lag.bound, lag.from.edge == Edge::start ? c.start : c.end);
    if (partial_.run(lag.to).start > latest) found.push_back({Blocker::Rule::limit, lag.tag, {lag.to}, c.start, latest});
  }
}

void Blockers::add_set_ups(const Candidate& c, std::vector<Blocker>& found) {
  const int family = network_.activity(c.activity).family;
  if (family < 0) return;
  partial_.place(c);
  for (const int a : network_.families[family]) {
    if (a == c.activity || !partial_.placed(a)) continue;
    const Assignment& run = partial_.run(a);
    if (run.shared && !partial_.sharing(a, run.start)) found.push_back({Blocker::Rule::set_up, -1, {a}, run.start, run.end});
  }
  partial_.remove(c.activity);
}

}  // namespace coatday::solver
