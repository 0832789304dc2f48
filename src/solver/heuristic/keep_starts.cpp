#include "solver/heuristic/keep_starts.h"

#include <algorithm>
#include <tuple>

#include "solver/base/calendar.h"
#include "solver/base/violations.h"
#include "solver/heuristic/branch_passes.h"
#include "solver/heuristic/no_worse.h"
#include "solver/heuristic/pass.h"
#include "solver/heuristic/priority.h"
#include "solver/heuristic/restore_starts.h"

namespace coatday::solver {
namespace {

constexpr int most_passes = 16;

// Within the bounds nothing is later for it, or ready on a later day.
auto lesser_aims(const Score& score) { return std::tuple(score.moved, score.total, score.setups); }

class Keeper {
 public:
  Keeper(const Network& network, const Bounds& bounds, const Limits& limits, const Budget& budget, const Schedule& schedule)
      : network_(network),
        bounds_(bounds),
        limits_(limits),
        budget_(budget),
        best_(schedule),
        best_score_(score(network.problem, schedule)),
        must_move_(at(network.size), 0) {
    for (int a = 0; a < network.size; ++a) {
      if (kept(a) && !may_stay(a)) must_move_[at(a)] = 1;
    }
  }

  Schedule run() {
    restore(best_);
    for (int pass = 0; pass < most_passes && best_score_.moved > 0 && !budget_.cut_off(); ++pass) try_once(pass);
    restore(best_);
    return best_;
  }

 private:
  [[nodiscard]] const std::optional<Time>& kept(int a) const { return network_.activity(a).kept; }

  [[nodiscard]] bool may_stay(int a) const {
    if (network_.activity(a).optional) return true;
    return *kept(a) >= bounds_.earliest(a) && *kept(a) <= bounds_.latest(a) &&
           next_allowed(network_.activity(a).starts, *kept(a)) == *kept(a);
  }

  void try_once(int pass) {
    const PassSettings how = settings(pass);
    PassState state(network_, bounds_, how);
    const PassResult made = Pass(state, budget_, failure_counts_).run();
    if (!made.schedule) return;
    for (int a = 0; a < network_.size; ++a) {  // an activity that had to move once goes last from now on
      const Assignment& run = made.schedule->activities[at(a)];
      if (kept(a) && run.present && run.start != *kept(a)) must_move_[at(a)] = 1;
    }
    restore(*made.schedule);
  }

  // Activities that can stay go first. Those that must move go last, or in their old turn.
  [[nodiscard]] PassSettings settings(int pass) const {
    PassSettings d;
    d.generous = pass % 2 == 1;
    d.patience_each = limits_.unscheduling_per_activity;
    d.patience_all = limits_.unscheduling_per_activity + 8 * network_.size;
    const bool last = pass % 4 < 2;
    for (int a = 0; a < network_.size; ++a) {
      const Assignment& run = best_.activities[at(a)];
      d.wanted.push_back(kept(a).value_or(unreachable));
      const double start = kept(a) ? *kept(a) : run.present ? run.start : bounds_.earliest(a);
      d.key.push_back(start + (last && (must_move_[at(a)] != 0 || !kept(a)) ? static_cast<double>(network_.problem.horizon) : 0));
    }
    d.firmness.assign(network_.problem.maximum_lags.size(), pass % 8 < 4 ? 0 : 3);
    follow_precedence(network_, d.key);
    return d;
  }

  void restore(const Schedule& schedule) {
    Schedule restored = RestoreStarts(network_, bounds_, schedule).run();
    const Score reached = score(network_.problem, restored);
    if (lesser_aims(reached) >= lesser_aims(best_score_) || !violations(network_.problem, restored).empty()) return;
    best_ = std::move(restored);
    best_score_ = reached;
  }

  const Network& network_;
  const Bounds& bounds_;
  const Limits& limits_;
  const Budget& budget_;
  Schedule best_;
  Score best_score_;
  FailureCounts failure_counts_;
  std::vector<char> must_move_;  // by activity: it cannot stay
};

}  // namespace

bool has_kept_starts(const Problem& problem) {
  return std::any_of(problem.activities.begin(), problem.activities.end(), [](const Activity& a) { return a.kept.has_value(); });
}

// Keeps the branches: another branch means other activities.
void keep_starts(const Problem& given, const Limits& limits, Found& found) {
  const Problem problem = with_branches(given, taken_branches(given, found.schedule));
  Limits quick = limits;  // the rest takes passes, not seconds
  quick.seconds = 0;
  quick.work = 0;
  quick.progress = nullptr;
  Budget budget(quick);
  const Network network(problem);
  const Bounds bounds = no_worse(network, found.schedule);
  found.schedule = Keeper(network, bounds, quick, budget, found.schedule).run();
  found.score = score(problem, found.schedule);
}

}  // namespace coatday::solver
