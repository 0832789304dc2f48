#include "solver/heuristic/pass.h"

#include <algorithm>

namespace coatday::solver {

Pass::Pass(PassState& state, const Budget& budget, FailureCounts& failure_counts)
    : network_(state.network),
      settings_(state.settings),
      budget_(budget),
      state_(state),
      partial_(state_.partial),
      fit_(state_.fit),
      queue_(state_),
      repair_(state_, queue_, failure_counts) {}

// In a pass in time: whether another activity could start before this one, now that more is placed. This one then goes back to the queue.
bool Pass::yields(PassQueue::Waiting waiting) {
  if (!settings_.in_time || queue_.empty()) return false;
  PassQueue::Seen& seen = queue_.seen(waiting.activity);
  if (waiting.soonest >= seen.from && waiting.soonest < seen.soonest) {  // another of its kind could not start there either
    waiting.soonest = seen.soonest;
    queue_.push(waiting);
    return true;
  }
  const Lifted lifted = lift_holds(waiting.activity);
  const Proposal proposal = propose(waiting.activity, waiting.soonest);
  put_back(lifted);
  if (!proposal.candidate || proposal.candidate->start <= waiting.soonest) return false;
  seen = {waiting.soonest, proposal.candidate->start};
  waiting.soonest = proposal.candidate->start;
  if (queue_.before(waiting, queue_.front())) return false;
  queue_.push(waiting);
  return true;
}

PassResult Pass::run() {
  for (const int a : network_.order) queue_.push(a);
  if (!place_all()) return {std::nullopt, repair_.stuck()};
  return {result(), -1};
}

bool Pass::again(const std::vector<int>& activities) {
  for (const int a : activities) repair_.unschedule(a);
  return place_all();
}

bool Pass::place_all() {
  do {
    while (!queue_.empty()) {
      const PassQueue::Waiting next = queue_.pop();
      const int a = next.activity;
      if (partial_.placed(a) || state_.unplaced_predecessors[at(a)] > 0 || yields(next)) continue;
      if ((settings_.at_leisure ? budget_.stopped() : budget_.cut_off()) || !attempt(a)) return false;
    }
    if (repair_.out_of_patience()) return false;
  } while (!confirm_holds());
  return true;
}

// Places the activity, or takes out what is in its way and puts it back into the queue. False: the pass must be given up.
bool Pass::attempt(int a) {
  repair_.drop_remedies(a);
  Time from = -unreachable;
  while (true) {
    const Lifted lifted = lift_holds(a);
    Proposal proposal = propose(a, from);
    if (proposal.sound() && proposal.windows.empty()) {
      const std::optional<Misfit> misfit = commit(*proposal.candidate, lifted);
      if (!misfit) return true;
      from = misfit->from;
      if (from >= unreachable) {
        proposal.candidate.reset();
        proposal.why.hold = misfit->hold;
      }
    }
    put_back(lifted);
    if (proposal.sound() && proposal.windows.empty()) continue;
    if (!proposal.sound()) return repair_.resolve(a, proposal);
    if (!use_remedies(a, proposal.windows)) return false;
    const bool ready = std::all_of(proposal.windows.begin(), proposal.windows.end(), [this](int lag) {
      return !state_.remedy_used[at(lag)] || partial_.placed(*network_.max_lag(lag).remedy);
    });
    if (ready && (network_.activity(a).optional || state_.unplaced_predecessors[at(a)] == 0)) continue;
    queue_.push(a);
    return true;
  }
}

bool Pass::use_remedies(int a, const std::vector<int>& windows) {
  for (const int lag : windows) {
    if (network_.max_lag(lag).to != a || !partial_.placed(network_.max_lag(lag).from.activity)) continue;
    state_.remedy_used[at(lag)] = 1;
    const int remedy = *network_.max_lag(lag).remedy;
    if (!partial_.placed(remedy) && !attempt(remedy)) return false;
  }
  return true;
}

Proposal Pass::propose(int a, Time from) {
  if (auto wanted = propose_wanted(a, from)) return std::move(*wanted);
  Proposal alone = propose(a, false, from);
  const Activity& activity = network_.activity(a);
  if (!may_share(activity) || partial_.ends(activity.family).empty()) return alone;
  Proposal shared = propose(a, true, from);
  if (shared.sound() != alone.sound()) return shared.sound() ? shared : alone;
  if (!shared.candidate || !alone.candidate) return shared.candidate ? shared : alone;
  return shared.candidate->end <= alone.candidate->end ? shared : alone;
}

Proposal Pass::propose(int a, bool shared, Time from) {
  Proposal proposal;
  proposal.candidate = fit_.earliest(a, shared, std::max(from, state_.lower_bound(a, shared)), proposal.why);
  if (proposal.candidate) examine(proposal);
  return proposal;
}

// A place at the wanted start, if that breaks nothing; if only a near one will do, the next one after it.
std::optional<Proposal> Pass::propose_wanted(int a, Time from) {
  if (settings_.wanted.empty()) return std::nullopt;
  const Time wanted = settings_.wanted[at(a)];
  if (wanted == unreachable) return std::nullopt;
  for (const bool shared : {true, false}) {
    if (wanted < from) break;
    std::optional<Proposal> there = wanted < state_.lower_bound(a, shared) ? std::nullopt : propose_sound(a, shared, wanted);
    if (there && there->candidate->start == wanted) return there;
  }
  if (!settings_.near) return std::nullopt;
  std::optional<Proposal> shared = propose_sound(a, true, std::max(from, wanted)), alone = propose_sound(a, false, std::max(from, wanted));
  if (!shared || !alone) return shared ? shared : alone;
  return shared->candidate->end <= alone->candidate->end ? shared : alone;
}

std::optional<Proposal> Pass::propose_sound(int a, bool shared, Time from) {
  const Activity& activity = network_.activity(a);
  if (shared && (!may_share(activity) || partial_.ends(activity.family).empty())) return std::nullopt;
  Proposal there = propose(a, shared, from);
  if (!there.sound() || !there.windows.empty()) return std::nullopt;
  return there;
}

// Finds what the candidate would break.
void Pass::examine(Proposal& proposal) {
  const Candidate& c = *proposal.candidate;
  const int a = c.activity;
  const auto point = [&](Edge edge) { return edge == Edge::start ? c.start : c.end; };
  proposal.late = c.start > state_.bounds.latest(a);
  for (const int i : network_.max_in[a]) {
    const MaximumLag& lag = network_.max_lag(i);
    if (network_.force[at(i)] == Force::none || state_.remedy_used[at(i)] || !partial_.placed(lag.from.activity)) continue;
    if (c.start <= value_of(lag.bound, partial_.point(lag.from))) continue;
    const bool keep = network_.force[at(i)] == Force::hard || state_.firmness[at(i)] > 0;
    (keep ? proposal.missed : proposal.windows).push_back(i);
  }
  for (const int i : network_.min_out[a]) {
    const MinimumLag& lag = network_.min_lag(i);
    if (!partial_.placed(lag.to) || partial_.run(lag.to).start >= value_of(lag.bound, point(lag.from.edge))) continue;
    proposal.overtaken.push_back(i);
  }
  for (const int i : network_.max_out[a]) {
    const MaximumLag& lag = network_.max_lag(i);
    if (network_.force[at(i)] == Force::none || state_.remedy_used[at(i)] || !partial_.placed(lag.to)) continue;
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

std::optional<Pass::Misfit> Pass::commit(const Candidate& c, const Lifted& lifted) {
  partial_.place(c);
  std::vector<int> reserved;
  Time freed = unreachable;
  const std::optional<Misfit> misfit = reserve_holds(c, lifted, reserved, freed);
  if (misfit) {
    for (const int h : reserved) partial_.lift(h);
    partial_.remove(c.activity);
    return misfit;
  }
  if (settings_.in_time && freed < unreachable) queue_.wake(freed);
  for (const int i : network_.min_out[c.activity]) {
    const MinimumLag& lag = network_.min_lag(i);
    if (network_.precedence(lag) && --state_.unplaced_predecessors[at(lag.to)] == 0) queue_.push(lag.to);
  }
  return std::nullopt;
}

// The proposal looked at each demand alone. Together they may still be too much. The holds that others began come first: the later the
// activity the longer they last, so what is too much of these stays too much.
std::optional<Pass::Misfit> Pass::reserve_holds(const Candidate& c, const Lifted& lifted, std::vector<int>& reserved, Time& freed) {
  for (const bool begins : {false, true}) {
    for (const int h : network_.holds[c.activity]) {
      const Hold& hold = network_.hold(h);
      if ((hold.first == c.activity) != begins || !partial_.placed(hold.first)) continue;
      const Interval time = fit_.held(hold, c);
      const auto was = std::find_if(lifted.begin(), lifted.end(), [h](const auto& entry) { return entry.first == h; });
      const bool keeps = was != lifted.end() && fit_.fits(hold.choices[at(was->second.choice)], time);
      const int choice = keeps ? was->second.choice : fit_.choose(hold, time);
      if (choice < 0) return Misfit{h, begins ? c.start + 1 : unreachable};
      partial_.reserve(h, {choice, time, {}});
      reserved.push_back(h);
      if (was != lifted.end() && time.end < was->second.time.end) freed = std::min(freed, time.end);
    }
  }
  return std::nullopt;
}

// Holds were reserved before everything was known. Reserves them again. False: something had to be taken out.
bool Pass::confirm_holds() {
  if (!partial_.on_trial()) {
    for (int h = 0; h < static_cast<int>(network_.problem.holds.size()); ++h) {
      if (!confirm_hold(h)) return false;
    }
    return true;
  }
  const std::vector<int> changed = partial_.changed();
  for (const int a : changed) {
    for (const int h : network_.holds[a]) {
      if (!confirm_hold(h)) return false;
    }
  }
  return true;
}

bool Pass::confirm_hold(int h) {
  const Hold& hold = network_.hold(h);
  if (!partial_.placed(hold.first)) return true;
  const Interval time = fit_.held(hold, {});
  const PartialSchedule::Reserved was = partial_.lift(h);
  const bool keeps = was.choice >= 0 && fit_.fits(hold.choices[at(was.choice)], time);
  const int choice = keeps ? was.choice : fit_.choose(hold, time);
  if (choice < 0) {
    repair_.take_out(hold.first);
    return false;
  }
  partial_.reserve(h, {choice, time, {}});
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

}  // namespace coatday::solver
