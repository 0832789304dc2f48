#include "solver/heuristic/rework.h"

#include <algorithm>

namespace coatday::solver {
namespace {

constexpr int patience_each = 12, patience_all = 60;
constexpr int firm_windows = 3;

}  // namespace

Rework::Rework(const Network& network, const Bounds& bounds, const Schedule& schedule, const Budget& budget)
    : network_(network), bounds_(bounds), budget_(budget), state_(network, bounds, settings_) {
  settings_.near = true;
  settings_.patience_each = patience_each;
  settings_.patience_all = patience_all;
  settings_.wanted.assign(at(network.size), unreachable);
  settings_.key.assign(at(network.size), 0);
  state_.lookahead.wanted = settings_.wanted;
  load(schedule);
}

void Rework::load(const Schedule& schedule) {
  for (int a = 0; a < network_.size; ++a) {
    const Assignment& run = schedule.activities[at(a)];
    if (run.present) state_.partial.place({a, run.start, run.end, run.shared});
    want_as_placed(a);
  }
  for (int h = 0; h < static_cast<int>(network_.problem.holds.size()); ++h) {
    if (!placed(network_.hold(h).first)) continue;
    state_.partial.reserve(h, {schedule.hold_choice[at(h)], state_.fit.held(network_.hold(h), {}), schedule.hold_stretch[at(h)]});
  }
  for (std::size_t i = 0; i < network_.problem.maximum_lags.size(); ++i) {
    const MaximumLag& lag = network_.problem.maximum_lags[i];
    if (network_.force[i] != Force::soft || !placed(lag.to) || !placed(lag.from.activity)) continue;
    state_.remedy_used[i] = run(lag.to).start > value_of(lag.bound, state_.partial.point(lag.from)) ? 1 : 0;
  }
  std::fill(state_.unplaced_predecessors.begin(), state_.unplaced_predecessors.end(), 0);
  remedy_used_ = state_.remedy_used;
  release_ = state_.lookahead.release;
}

void Rework::want_as_placed(int a) {
  settings_.wanted[at(a)] = state_.lookahead.wanted[at(a)] = placed(a) ? run(a).start : unreachable;
  settings_.key[at(a)] = placed(a) ? run(a).start : bounds_.earliest(a);
}

bool Rework::change(const std::vector<Wish>& wishes, Manner manner) {
  std::vector<int> out;
  for (const Wish& wish : wishes) {
    settings_.wanted[at(wish.activity)] = state_.lookahead.wanted[at(wish.activity)] = wish.start;
    settings_.key[at(wish.activity)] = wish.key ? *wish.key : manner.first ? wish.start - network_.problem.horizon : wish.start;
    out.push_back(wish.activity);
  }
  state_.firmness.assign(network_.problem.maximum_lags.size(), manner.firm ? firm_windows : 0);
  state_.partial.begin_trial();
  const bool made = Pass(state_, budget_, failure_counts_).again(out);
  state_.lookahead.release = release_;
  for (const Wish& wish : wishes) want_as_placed(wish.activity);  // for others the wish is where they were
  if (made) return true;
  undo();
  for (const Wish& wish : wishes) want_as_placed(wish.activity);
  return false;
}

void Rework::accept() {
  for (const auto& [a, was] : before()) want_as_placed(a);
  state_.partial.accept();
  remedy_used_ = state_.remedy_used;
}

void Rework::undo() {
  const std::vector<int> changed = state_.partial.changed();
  state_.partial.undo();
  for (const int a : changed) want_as_placed(a);
  state_.remedy_used = remedy_used_;
  std::fill(state_.unplaced_predecessors.begin(), state_.unplaced_predecessors.end(), 0);
}

Schedule Rework::schedule() const {
  Schedule all;
  for (int a = 0; a < network_.size; ++a) all.activities.push_back(placed(a) ? run(a) : Assignment{0, 0, false, false});
  for (int h = 0; h < static_cast<int>(network_.problem.holds.size()); ++h) {
    all.hold_choice.push_back(state_.partial.reserved(h).choice);
    all.hold_stretch.push_back(state_.partial.reserved(h).stretch);
  }
  return all;
}

}  // namespace coatday::solver
