#include "solver/gather/gather.h"

#include <algorithm>

#include "solver/base/violations.h"
#include "solver/gather/moves.h"
#include "solver/gather/visit_count.h"
#include "solver/heuristic/branch_passes.h"
#include "solver/heuristic/no_worse.h"
#include "solver/heuristic/rework.h"

namespace coatday::solver {
namespace {

constexpr long least_tries = 6000, tries_each = 10;  // each: for an activity of a large problem
constexpr int small = 120;                           // activities
constexpr double often = 0.5, seldom = 0.01;

class Gatherer {
 public:
  Gatherer(const Network& network, const Bounds& bounds, const Budget& budget, const Schedule& schedule)
      : network_(network),
        bounds_(bounds),
        budget_(budget),
        random_(budget.limits().seed + 3),
        best_(schedule),
        count_(network.problem, schedule),
        work_(std::in_place, network, bounds, schedule, budget) {
    best_score_ = count_.score();
    visits_ = count_.visits();
  }

  Schedule run() {
    const long most = std::max(least_tries, tries_each * network_.size);
    long in_vain = 0;
    for (long n = 0; n < most && in_vain < most / 3 && !budget_.cut_off(); ++n, ++in_vain) {
      if (in_vain > 0 && in_vain % (most / 9) == 0) go_back();
      if (try_once()) in_vain = 0;
    }
    go_back();
    put_right_before();
    bring_forward();
    return work_->schedule();
  }

 private:
  // True: better than ever.
  bool try_once() {
    const std::vector<Wish> wishes = Moves(network_, bounds_, *work_, visits_, random_).any();
    const bool first = random_.chance(0.7), firm = random_.chance(0.8);
    const Gathered before = count_.score();
    if (wishes.empty() || !work_->change(wishes, {first, firm})) return false;
    recount();
    if (!may_keep(before, count_.score())) {
      take_back();
      return false;
    }
    work_->accept();
    visits_ = count_.visits();
    if (!(count_.score() < best_score_)) return false;
    best_score_ = count_.score();
    best_ = work_->schedule();
    return true;
  }

  bool may_keep(const Gathered& before, const Gathered& after) {
    if (after < before) return true;
    if (after.half_days != before.half_days || after.setups != before.setups) return false;
    if (after.visits == before.visits && after.lone == before.lone) return random_.chance(often);
    return network_.size <= small && after.visits == before.visits + 1 && random_.chance(seldom);
  }

  void recount() {
    for (const auto& [a, was] : work_->before()) {
      if (was) count_.take(a, *was);
      if (work_->placed(a)) count_.put(a, work_->run(a));
    }
  }

  void take_back() {
    for (const auto& [a, was] : work_->before()) {
      if (work_->placed(a)) count_.take(a, work_->run(a));
      if (was) count_.put(a, *was);
    }
    work_->undo();
  }

  void go_back() {
    if (count_.score() == best_score_) return;
    work_.emplace(network_, bounds_, best_, budget_);
    count_ = VisitCount(network_.problem, best_);
    static_cast<void>(count_.score());
    visits_ = count_.visits();
  }

  // A part is turned right before its next coat, if both are in one visit. Otherwise at the end of an earlier visit, so that the visit before the
  // coat begins with the coat.
  void put_right_before() {
    for (int a = 0; a < network_.size; ++a) {
      if (!network_.problem.presence->hands[at(a)].before_next || !work_->placed(a) || bounds_.earliest(a) == bounds_.latest(a)) continue;
      for (const Time start : Moves(network_, bounds_, *work_, visits_, random_).before_next(a)) {
        if (start == work_->run(a).start || try_at(a, start)) break;
      }
    }
  }

  // What is the better the sooner, as far as that takes no visit.
  void bring_forward() {
    std::vector<std::pair<Time, int>> by_start;
    for (int a = 0; a < network_.size; ++a) {
      if (network_.problem.presence->hands[at(a)].soon && work_->placed(a)) by_start.emplace_back(work_->run(a).start, a);
    }
    std::sort(by_start.begin(), by_start.end());
    for (const auto& [start, a] : by_start) {
      const Gathered before = count_.score();
      if (!work_->change({{a, bounds_.earliest(a)}}, {false, true})) continue;
      recount();
      if (count_.score() < before) {
        work_->accept();
        visits_ = count_.visits();
      } else {
        take_back();
      }
    }
  }

  bool try_at(int a, Time start) {
    const Gathered before = count_.score();
    if (!work_->change({{a, start}}, {true, true})) return false;
    recount();
    const Gathered after = count_.score();
    const auto same = [](Gathered one) {
      one.moved = 0;
      return one;
    };
    if (work_->run(a).start != start || same(after) > same(before)) {
      take_back();
      return false;
    }
    work_->accept();
    visits_ = count_.visits();
    return true;
  }

  const Network& network_;
  const Bounds& bounds_;
  const Budget& budget_;
  Random random_;
  Schedule best_;
  Gathered best_score_;
  VisitCount count_;
  std::optional<Rework> work_;
  std::vector<Visit> visits_;
};

bool all_kept(const Problem& problem, const Schedule& schedule) {
  bool any = false, all = true;
  for (std::size_t a = 0; a < problem.activities.size(); ++a) {
    const auto& kept = problem.activities[a].kept;
    if (!kept || !schedule.activities[a].present) continue;
    any = true;
    all = all && schedule.activities[a].start == *kept;
  }
  return any && all;
}

}  // namespace

Schedule gathered(const Problem& given, const Limits& limits, const Schedule& schedule) {
  const Problem problem = with_branches(given, taken_branches(given, schedule));
  Limits quick = limits;
  quick.progress = nullptr;
  quick.seconds = 0;
  quick.work = 0;
  const Budget budget(quick);
  const Network network(problem);
  const Bounds bounds = no_worse(network, schedule);
  return Gatherer(network, bounds, budget, schedule).run();
}

// What is kept whole stays: its list hangs on the wall.
void gather(const Problem& problem, const Limits& limits, Found& found) {
  if (!problem.presence || all_kept(problem, found.schedule)) return;
  Schedule schedule = gathered(problem, limits, found.schedule);
  if (!violations(problem, schedule).empty()) return;  // nobody sees what the judge does not agree with
  found.schedule = std::move(schedule);
  found.score = score(problem, found.schedule);
}

}  // namespace coatday::solver
