#include "solver/heuristic/restore_starts.h"

#include <algorithm>

namespace coatday::solver {
namespace {

constexpr int most_sweeps = 20;

}  // namespace

RestoreStarts::RestoreStarts(const Network& network, const Bounds& bounds, const Schedule& schedule)
    : network_(network), bounds_(bounds), schedule_(schedule), partial_(network), fit_(network, partial_, lookahead_) {
  lookahead_.release.resize(at(network.size));
  for (int a = 0; a < network.size; ++a) {
    lookahead_.release[at(a)] = bounds.earliest(a);
    const Assignment& run = schedule.activities[at(a)];
    if (run.present) partial_.place({a, run.start, run.end, run.shared});
  }
  for (int h = 0; h < static_cast<int>(network.problem.holds.size()); ++h) {
    const Hold& hold = network.hold(h);
    if (!partial_.placed(hold.first)) continue;
    partial_.reserve(h, {schedule.hold_choice[at(h)], fit_.held(hold, {}), schedule.hold_stretch[at(h)]});
  }
}

Schedule RestoreStarts::run() {
  std::vector<int> order;
  for (int a = 0; a < network_.size; ++a) {
    if (network_.activity(a).kept && partial_.placed(a)) order.push_back(a);
  }
  std::stable_sort(order.begin(), order.end(), [this](int a, int b) { return *network_.activity(a).kept < *network_.activity(b).kept; });
  for (int i = 0; i < most_sweeps; ++i) {
    const bool forth = sweep(order);
    std::reverse(order.begin(), order.end());
    const bool back = sweep(order);
    std::reverse(order.begin(), order.end());
    if (!forth && !back) break;
  }
  for (int a = 0; a < network_.size; ++a) {
    if (partial_.placed(a)) schedule_.activities[at(a)] = partial_.run(a);
  }
  for (int h = 0; h < static_cast<int>(network_.problem.holds.size()); ++h) {
    schedule_.hold_choice[at(h)] = partial_.reserved(h).choice;
    schedule_.hold_stretch[at(h)] = partial_.reserved(h).stretch;
  }
  return schedule_;
}

bool RestoreStarts::sweep(const std::vector<int>& order) {
  bool moved = false;
  for (const int a : order) moved = move(a) || moved;
  return moved;
}

bool RestoreStarts::move(int a) {
  const Activity& activity = network_.activity(a);
  const Time kept = *activity.kept;
  if (partial_.run(a).start == kept || kept > bounds_.latest(a)) return false;
  return (may_share(activity) && move(a, true)) || move(a, false);
}

// Moves the activity to its kept start, or not at all.
bool RestoreStarts::move(int a, bool shared) {
  const Assignment was = partial_.run(a);
  const Time kept = *network_.activity(a).kept;
  std::vector<std::pair<int, PartialSchedule::Reserved>> lifted;
  for (const int h : network_.holds[a]) {
    if (partial_.reserved(h).choice >= 0) lifted.emplace_back(h, partial_.lift(h));
  }
  partial_.remove(a);
  NoRoom why;
  const std::optional<Candidate> there = fit_.earliest(a, shared, kept, why);
  if (there && there->start == kept && lags_hold(*there, was)) {
    partial_.place(*there);
    if (all_share(network_.activity(a).family) && take_places(a)) return true;
    partial_.remove(a);
  }
  partial_.place({a, was.start, was.end, was.shared});
  for (const auto& [hold, reserved] : lifted) partial_.reserve(hold, reserved);
  return false;
}

// Whether the lags still hold. A window with a remedy must stay kept, or missed, as before.
bool RestoreStarts::lags_hold(const Candidate& c, const Assignment& was) const {
  const int a = c.activity;
  const auto of = [](const Candidate& run, Edge edge) { return edge == Edge::start ? run.start : run.end; };
  const Candidate before{a, was.start, was.end, was.shared};
  const auto least = [&](const MinimumLag& lag, const Candidate& run) {
    if (lag.to == a) return run.start >= value_of(lag.bound, partial_.point(lag.from));
    return partial_.run(lag.to).start >= value_of(lag.bound, of(run, lag.from.edge));
  };
  const auto most = [&](const MaximumLag& lag, const Candidate& run) {
    if (lag.to == a) return run.start <= value_of(lag.bound, partial_.point(lag.from));
    return partial_.run(lag.to).start <= value_of(lag.bound, of(run, lag.from.edge));
  };
  for (const auto& lags : {network_.min_in[a], network_.min_out[a]}) {
    for (const int i : lags) {
      const MinimumLag& lag = network_.min_lag(i);
      if (partial_.placed(lag.to == a ? lag.from.activity : lag.to) && !least(lag, c)) return false;
    }
  }
  for (const auto& lags : {network_.max_in[a], network_.max_out[a]}) {
    for (const int i : lags) {
      const MaximumLag& lag = network_.max_lag(i);
      if (network_.force[at(i)] == Force::none || !partial_.placed(lag.to == a ? lag.from.activity : lag.to)) continue;
      if (most(lag, c) != (network_.force[at(i)] == Force::hard || most(lag, before))) return false;
    }
  }
  return true;
}

// Reserves all holds of the activity as they now are. If one finds no place, reserves none and returns false.
bool RestoreStarts::take_places(int a) {
  std::vector<int> done;
  for (const int h : network_.holds[a]) {
    const Hold& hold = network_.hold(h);
    if (!partial_.placed(hold.first)) continue;
    const Interval time = fit_.held(hold, {});
    const int choice = fit_.choose(hold, time);
    if (choice < 0) {
      for (const int other : done) partial_.lift(other);
      return false;
    }
    partial_.reserve(h, {choice, time, {}});
    done.push_back(h);
  }
  return true;
}

// Whether every activity of the family that shares a set-up may still share it.
bool RestoreStarts::all_share(int family) const {
  if (family < 0) return true;
  const auto members = network_.families[family];
  return std::all_of(members.begin(), members.end(), [this](int a) {
    return !partial_.placed(a) || !partial_.run(a).shared || partial_.sharing(a, partial_.run(a).start);
  });
}

}  // namespace coatday::solver
