#include "solver/heuristic/keep_starts.h"

#include <algorithm>

#include "solver/base/calendar.h"
#include "solver/heuristic/branch_passes.h"
#include "solver/heuristic/incumbent.h"
#include "solver/heuristic/pass.h"
#include "solver/heuristic/priority.h"
#include "solver/heuristic/restore_starts.h"

namespace coatday::solver {
namespace {

constexpr int most_passes = 16;

// Bounds of the schedules that are as good: no goal starts later than it can without loss.
Bounds as_good(const Network& network, const Found& found) {
  const Bounds all = [&network] {
    Bounds bounds(network);
    bounds.propagate();
    return bounds;
  }();
  Bounds bounds = all;
  for (const Goal& goal : network.problem.goals) {
    const Assignment& run = found.schedule.activities[at(goal.activity)];
    if (run.present) bounds.start_by(goal.activity, std::max(run.start, std::min(goal.due, found.score.ready)));
  }
  return bounds.propagate() ? bounds : all;
}

class Keeper {
 public:
  Keeper(const Network& network, const Bounds& bounds, const Limits& limits, const Budget& budget, Incumbent& incumbent)
      : network_(network), bounds_(bounds), limits_(limits), budget_(budget), incumbent_(incumbent), must_move_(at(network.size), 0) {
    for (int a = 0; a < network.size; ++a) {
      if (kept(a) && !may_stay(a)) must_move_[at(a)] = 1;
    }
  }

  void run() {
    restore();
    for (int pass = 0; pass < most_passes && incumbent_.best()->score.moved > 0 && !budget_.cut_off(); ++pass) try_once(pass);
    restore();
  }

 private:
  [[nodiscard]] const std::optional<Time>& kept(int a) const { return network_.activity(a).kept; }

  [[nodiscard]] bool may_stay(int a) const {
    if (network_.activity(a).optional) return true;
    return *kept(a) >= bounds_.earliest(a) && *kept(a) <= bounds_.latest(a) &&
           next_allowed(network_.activity(a).starts, *kept(a)) == *kept(a);
  }

  void try_once(int pass) {
    const PassResult made = Pass(network_, bounds_, settings(pass), budget_, failure_counts_).run();
    if (!made.schedule) return;
    for (int a = 0; a < network_.size; ++a) {  // an activity that had to move once goes last from now on
      const Assignment& run = made.schedule->activities[at(a)];
      if (kept(a) && run.present && run.start != *kept(a)) must_move_[at(a)] = 1;
    }
    RestoreStarts restore(network_, bounds_, *made.schedule);
    const Schedule schedule = restore.run();
    incumbent_.offer(schedule, score(network_.problem, schedule));
  }

  // Activities that can stay go first. Those that must move go last, or in their old turn.
  [[nodiscard]] PassSettings settings(int pass) const {
    const Schedule& best = incumbent_.best()->schedule;
    PassSettings d;
    d.prefer_kept = true;
    d.generous = pass % 2 == 1;
    d.patience_each = limits_.unscheduling_per_activity;
    d.patience_all = limits_.unscheduling_per_activity + 8 * network_.size;
    const bool last = pass % 4 < 2;
    for (int a = 0; a < network_.size; ++a) {
      const Assignment& run = best.activities[at(a)];
      const double start = kept(a) ? *kept(a) : run.present ? run.start : bounds_.earliest(a);
      d.key.push_back(start + (last && (must_move_[at(a)] != 0 || !kept(a)) ? static_cast<double>(network_.problem.horizon) : 0));
    }
    d.firmness.assign(network_.problem.maximum_lags.size(), pass % 8 < 4 ? 0 : 3);
    follow_precedence(network_, d.key);
    return d;
  }

  void restore() {
    RestoreStarts restore(network_, bounds_, incumbent_.best()->schedule);
    const Schedule schedule = restore.run();
    incumbent_.offer(schedule, score(network_.problem, schedule));
  }

  const Network& network_;
  const Bounds& bounds_;
  const Limits& limits_;
  const Budget& budget_;
  Incumbent& incumbent_;
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
  found.score = score(problem, found.schedule);
  const Bounds bounds = as_good(network, found);
  Incumbent incumbent(network, budget);
  if (!incumbent.offer(found.schedule, found.score)) return;
  Keeper(network, bounds, quick, budget, incumbent).run();
  found.schedule = incumbent.best()->schedule;
  found.score = incumbent.best()->score;
}

}  // namespace coatday::solver
