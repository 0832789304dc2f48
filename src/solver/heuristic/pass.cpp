#include "solver/heuristic/pass.h"

#include <algorithm>

namespace coatday::solver {

Pass::Pass(const Network& network, const Bounds& bounds, const PassSettings& settings, const Budget& budget, FailureCounts& failure_counts)
    : network_(network),
      bounds_(bounds),
      settings_(settings),
      budget_(budget),
      failure_counts_(failure_counts),
      partial_(network),
      fit_(network, partial_, lookahead_),
      seen_(at(network.kinds)),
      waiting_(at(network.size), 0),
      remedy_used_(network.problem.maximum_lags.size(), 0),
      firmness_(settings.firmness),
      failures_(at(network.size), 0) {
  lookahead_.generous = settings.generous;
  lookahead_.release.resize(at(network.size));
  for (int a = 0; a < network.size; ++a) lookahead_.release[at(a)] = bounds.earliest(a);
  for (const MinimumLag& lag : network.problem.minimum_lags) {
    if (network.precedence(lag)) ++waiting_[at(lag.to)];
  }
}

bool Pass::before(int a, int b) const {
  const double one = settings_.key[at(a)], other = settings_.key[at(b)];
  return one != other ? one < other : network_.rank[at(a)] < network_.rank[at(b)];
}

void Pass::push(int a) {
  if (network_.activity(a).optional || partial_.placed(a) || waiting_[at(a)] > 0) return;
  push({a, settings_.in_time ? lower_bound(a, false) : 0});
}

void Pass::push(const Waiting& waiting) {
  heap_.push_back(waiting);
  std::push_heap(heap_.begin(), heap_.end(), [this](const Waiting& x, const Waiting& y) { return before(y, x); });
}

Pass::Waiting Pass::pop() {
  std::pop_heap(heap_.begin(), heap_.end(), [this](const Waiting& x, const Waiting& y) { return before(y, x); });
  const Waiting waiting = heap_.back();
  heap_.pop_back();
  return waiting;
}

// Something that was reserved is free from t on: what waits for its like may start sooner than it seemed.
void Pass::wake(Time t) {
  seen_.assign(seen_.size(), {});
  bool sooner = false;
  for (Waiting& waiting : heap_) {
    if (waiting.soonest <= t || !begins_hold(waiting.activity)) continue;
    const Time soonest = std::max(t, lower_bound(waiting.activity, false));
    sooner = sooner || soonest < waiting.soonest;
    waiting.soonest = std::min(waiting.soonest, soonest);
  }
  if (sooner) std::make_heap(heap_.begin(), heap_.end(), [this](const Waiting& x, const Waiting& y) { return before(y, x); });
}

bool Pass::begins_hold(int a) const {
  const auto holds = network_.holds[a];
  return std::any_of(holds.begin(), holds.end(), [&](int h) { return network_.hold(h).first == a; });
}

// In a pass in time: whether another could start before it, now that more is placed. It then waits on.
bool Pass::yields(Waiting waiting) {
  if (!settings_.in_time || heap_.empty()) return false;
  Seen& seen = seen_[at(network_.kind[at(waiting.activity)])];
  if (waiting.soonest >= seen.from && waiting.soonest < seen.soonest) {  // nor could this one
    waiting.soonest = seen.soonest;
    push(waiting);
    return true;
  }
  const Lifted lifted = lift_holds(waiting.activity);
  const Proposal proposal = propose(waiting.activity, waiting.soonest);
  put_back(lifted);
  if (!proposal.candidate || proposal.candidate->start <= waiting.soonest) return false;
  seen = {waiting.soonest, proposal.candidate->start};
  waiting.soonest = proposal.candidate->start;
  if (before(waiting, heap_.front())) return false;
  push(waiting);
  return true;
}

Constructed Pass::run() {
  for (const int a : network_.order) push(a);
  do {
    while (!heap_.empty()) {
      const Waiting next = pop();
      const int a = next.activity;
      if (partial_.placed(a) || waiting_[at(a)] > 0 || yields(next)) continue;
      if ((settings_.at_leisure ? budget_.stopped() : budget_.cut_off()) || !attempt(a)) return {std::nullopt, stuck_};
    }
    if (all_failures_ > settings_.patience_all) return {std::nullopt, stuck_};
  } while (!confirm_holds());
  return {result(), -1};
}

// Places the activity, or takes out what is in its way so that it comes up again. False: the pass is to be given up.
bool Pass::attempt(int a) {
  drop_remedies(a);
  Time from = -unreachable;
  while (true) {
    const Lifted lifted = lift_holds(a);
    const Proposal proposal = propose(a, from);
    if (proposal.sound() && proposal.windows.empty()) {
      if (commit(*proposal.candidate, lifted)) return true;
      from = proposal.candidate->start + 1;
      put_back(lifted);
      continue;
    }
    put_back(lifted);
    if (!proposal.sound()) return resolve(a, proposal);
    if (!use_remedies(a, proposal.windows)) return false;
    const bool ready = std::all_of(proposal.windows.begin(), proposal.windows.end(),
                                   [this](int lag) { return !remedy_used_[at(lag)] || partial_.placed(*network_.max_lag(lag).remedy); });
    if (ready && (network_.activity(a).optional || waiting_[at(a)] == 0)) continue;
    push(a);
    return true;
  }
}

bool Pass::use_remedies(int a, const std::vector<int>& windows) {
  for (const int lag : windows) {
    if (network_.max_lag(lag).to != a || !partial_.placed(network_.max_lag(lag).from.activity)) continue;
    remedy_used_[at(lag)] = 1;
    const int remedy = *network_.max_lag(lag).remedy;
    if (!partial_.placed(remedy) && !attempt(remedy)) return false;
  }
  return true;
}

Pass::Proposal Pass::propose(int a, Time from) {
  if (auto kept = propose_kept(a, from)) return std::move(*kept);
  Proposal alone = propose(a, false, from);
  const Activity& activity = network_.activity(a);
  if (!may_share(activity) || partial_.ends(activity.family).empty()) return alone;
  Proposal shared = propose(a, true, from);
  if (shared.sound() != alone.sound()) return shared.sound() ? shared : alone;
  if (!shared.candidate || !alone.candidate) return shared.candidate ? shared : alone;
  return shared.candidate->end <= alone.candidate->end ? shared : alone;
}

Pass::Proposal Pass::propose(int a, bool shared, Time from) {
  Proposal proposal;
  proposal.candidate = fit_.earliest(a, shared, std::max(from, lower_bound(a, shared)), proposal.why);
  if (proposal.candidate) examine(proposal);
  return proposal;
}

// At its kept start, if that breaks nothing.
std::optional<Pass::Proposal> Pass::propose_kept(int a, Time from) {
  const Activity& activity = network_.activity(a);
  if (!settings_.prefer_kept || !activity.kept || *activity.kept < from) return std::nullopt;
  for (const bool shared : {true, false}) {
    if (*activity.kept < lower_bound(a, shared) || (shared && (!may_share(activity) || partial_.ends(activity.family).empty()))) continue;
    Proposal there = propose(a, shared, *activity.kept);
    if (there.sound() && there.windows.empty() && there.candidate->start == *activity.kept) return there;
  }
  return std::nullopt;
}

Time Pass::lower_bound(int a, bool shared) const {
  Time t = lookahead_.release[at(a)];
  for (const int i : network_.min_in[a]) {
    const MinimumLag& lag = network_.min_lag(i);
    if (partial_.placed(lag.from.activity)) t = std::max(t, value_of(lag.bound, partial_.point(lag.from)));
  }
  for (const int i : network_.max_in[a]) {
    if (!remedy_used_[at(i)]) continue;  // a remedy takes part only where the window is missed
    const MaximumLag& lag = network_.max_lag(i);
    if (partial_.placed(lag.from.activity)) t = std::max(t, value_of(lag.bound, partial_.point(lag.from)) + 1);
  }
  const Activity& activity = network_.activity(a);
  for (const int i : network_.max_out[a]) {
    const MaximumLag& lag = network_.max_lag(i);
    if (network_.force[at(i)] == Force::none || remedy_used_[at(i)] || !partial_.placed(lag.to)) continue;
    const Time low = bounds_.earliest(a), high = std::max(low, bounds_.latest(a));
    const Time reach = latest_of(lag.bound, partial_.run(lag.to).start - 1, value_of(activity, lag.from.edge, low, shared),
                                 value_of(activity, lag.from.edge, high, shared));
    t = std::max(t, latest_of(activity, lag.from.edge, shared, reach, low, high) + 1);
  }
  return t;
}

// What the candidate would break.
void Pass::examine(Proposal& proposal) {
  const Candidate& c = *proposal.candidate;
  const int a = c.activity;
  const auto point = [&](Edge edge) { return edge == Edge::start ? c.start : c.end; };
  proposal.late = c.start > bounds_.latest(a);
  for (const int i : network_.max_in[a]) {
    const MaximumLag& lag = network_.max_lag(i);
    if (network_.force[at(i)] == Force::none || remedy_used_[at(i)] || !partial_.placed(lag.from.activity)) continue;
    if (c.start <= value_of(lag.bound, partial_.point(lag.from))) continue;
    const bool keep = network_.force[at(i)] == Force::hard || firmness_[at(i)] > 0;
    (keep ? proposal.missed : proposal.windows).push_back(i);
  }
  for (const int i : network_.min_out[a]) {
    const MinimumLag& lag = network_.min_lag(i);
    if (!partial_.placed(lag.to) || partial_.run(lag.to).start >= value_of(lag.bound, point(lag.from.edge))) continue;
    proposal.overtaken.push_back(i);
  }
  for (const int i : network_.max_out[a]) {
    const MaximumLag& lag = network_.max_lag(i);
    if (network_.force[at(i)] == Force::none || remedy_used_[at(i)] || !partial_.placed(lag.to)) continue;
    if (partial_.run(lag.to).start > value_of(lag.bound, point(lag.from.edge))) proposal.outrun.push_back(i);
  }
}

Pass::Lifted Pass::lift_holds(int a) {
  Lifted lifted;
  for (const int h : network_.holds[a]) {
    if (partial_.reserved(h).choice >= 0) lifted.emplace_back(h, partial_.lift(h));
  }
  return lifted;
}

void Pass::put_back(const Lifted& lifted) {
  for (const auto& [hold, reserved] : lifted) partial_.reserve(hold, reserved);
}

// The proposal looked at each demand by itself; together they may still be too much.
bool Pass::commit(const Candidate& c, const Lifted& lifted) {
  partial_.place(c);
  std::vector<int> done;
  Time freed = unreachable;
  bool fits = true;
  for (const int h : network_.holds[c.activity]) {
    const Hold& hold = network_.hold(h);
    if (!partial_.placed(hold.first)) continue;
    const Interval time = fit_.held(hold, c);
    const auto was = std::find_if(lifted.begin(), lifted.end(), [h](const auto& entry) { return entry.first == h; });
    const bool keeps = was != lifted.end() && fit_.fits(hold.choices[at(was->second.choice)], time);
    const int choice = keeps ? was->second.choice : fit_.choose(hold, time);
    fits = choice >= 0;
    if (!fits) break;
    partial_.reserve(h, {choice, time, {}});
    done.push_back(h);
    if (was != lifted.end() && time.end < was->second.time.end) freed = std::min(freed, time.end);
  }
  if (!fits) {
    for (const int h : done) partial_.lift(h);
    partial_.remove(c.activity);
    return false;
  }
  if (settings_.in_time && freed < unreachable) wake(freed);
  for (const int i : network_.min_out[c.activity]) {
    const MinimumLag& lag = network_.min_lag(i);
    if (network_.precedence(lag) && --waiting_[at(lag.to)] == 0) push(lag.to);
  }
  return true;
}

// Holds were reserved with what was known at the time; now all is known. False: something had to be taken out.
bool Pass::confirm_holds() {
  for (int h = 0; h < static_cast<int>(network_.problem.holds.size()); ++h) {
    const Hold& hold = network_.hold(h);
    if (!partial_.placed(hold.first)) continue;
    const Interval time = fit_.held(hold, {});
    const PartialSchedule::Reserved was = partial_.lift(h);
    const bool keeps = was.choice >= 0 && fit_.fits(hold.choices[at(was.choice)], time);
    const int choice = keeps ? was.choice : fit_.choose(hold, time);
    if (choice >= 0) {
      partial_.reserve(h, {choice, time, {}});
      continue;
    }
    ++all_failures_;
    stuck_ = hold.first;
    unschedule(hold.first);
    return false;
  }
  return true;
}

Schedule Pass::result() const {
  Schedule schedule;
  for (int a = 0; a < network_.size; ++a) {
    schedule.activities.push_back(partial_.placed(a) ? partial_.run(a) : Assignment{0, 0, false, false});
  }
  for (int h = 0; h < static_cast<int>(network_.problem.holds.size()); ++h) {
    schedule.hold_choice.push_back(partial_.reserved(h).choice);
    schedule.hold_stretch.push_back(partial_.reserved(h).stretch);
  }
  return schedule;
}

Constructed construct(const Network& network, const Bounds& bounds, const PassSettings& settings, const Budget& budget,
                      FailureCounts& failure_counts) {
  return Pass(network, bounds, settings, budget, failure_counts).run();
}

}  // namespace coatday::solver
