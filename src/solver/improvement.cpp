#include "solver/improvement.h"

#include <algorithm>

namespace coatday::solver {
namespace {

constexpr int plain_passes = 4;  // by urgency and job by job, each with holds reserved leanly and generously

}  // namespace

Improvement::Improvement(const Network& network, const Bounds& bounds, const Limits& limits)
    : network_(network),
      bounds_(bounds),
      limits_(limits),
      random_(limits.seed),
      urgency_(urgency(network, bounds)),
      job_(jobs(network, urgency_)),
      boost_(urgency_.size(), 0) {
  for (const int job : job_) job_count_ = std::max(job_count_, job + 1);
  if (urgency_.empty()) return;
  const auto [low, high] = std::minmax_element(urgency_.begin(), urgency_.end());
  breadth_ = std::max(1.0, *high - *low);
}

Outcome Improvement::run() {
  for (int pass = 0; pass < std::max(plain_passes, limits_.passes) && !best_; ++pass) try_once(directions(pass));
  if (!best_) {
    const int worst = troubles_.worst();
    return NotFound{worst, troubles_.blockers(worst)};
  }
  for (int pass = 1; pass <= limits_.passes && !unbeatable(); ++pass) try_once(directions(pass));
  return std::move(*best_);
}

Directions Improvement::directions(int pass) {
  const bool plain = pass < plain_passes;
  Directions d = best_ && !plain && random_.chance(0.8) ? by_best() : by_rule(pass);
  d.patience_each = limits_.unscheduling_per_activity;
  d.patience_all = limits_.unscheduling_per_activity + 8 * network_.size;
  follow_precedence(network_, d.key);
  return d;
}

Directions Improvement::by_rule(int pass) {
  const bool plain = pass < plain_passes;
  Directions d;
  d.generous = pass % 2 == 1;
  d.key = urgency_;
  const bool by_job = plain ? pass >= plain_passes / 2 : random_.chance(0.3);
  for (std::size_t i = 0; by_job && i < d.key.size(); ++i) d.key[i] += 2 * breadth_ * job_[i];
  if (!plain) shake(d.key, breadth_ * (0.05 + 0.3 * random_.unit()) * (by_job ? 4 : 1));
  const double firm = !plain && random_.chance(0.5) ? random_.unit() : 0;
  for (std::size_t i = 0; i < network_.problem.maximum_lags.size(); ++i) d.firmness.push_back(random_.chance(firm) ? 3 : 0);
  if (plain || random_.chance(0.5)) {
    for (std::size_t i = 0; i < d.key.size(); ++i) d.key[i] -= boost_[i] * breadth_ / 4;
  }
  return d;
}

// The order of the best schedule with a little changed: everywhere, within a stretch of time, or for some jobs.
Directions Improvement::by_best() {
  Directions d = best_directions_;
  if (random_.chance(0.2)) d.generous = !d.generous;
  if (random_.chance(0.3)) {
    for (int& times : d.firmness) times = random_.chance(0.2) ? 3 - times : times;
  }
  const double move = random_.unit();
  if (move < 0.3) {
    const double size = random_.unit();
    shake(d.key, spread_ * (0.005 + 0.3 * size * size * size));  // mostly little
  } else if (move < 0.6) {
    shake_window(d.key);
  } else {
    move_jobs(d.key);
  }
  return d;
}

void Improvement::shake(Keys& keys, double by) {
  for (double& key : keys) key += by * random_.unit();
}

void Improvement::shake_window(Keys& keys) {
  const double width = spread_ * (0.02 + 0.2 * random_.unit());
  const double begin = *std::min_element(keys.begin(), keys.end()) + spread_ * random_.unit() - width / 2;
  for (double& key : keys) {
    if (key >= begin && key < begin + width) key = begin + width * random_.unit();
  }
}

// Late jobs earlier, any others to and fro.
void Improvement::move_jobs(Keys& keys) {
  std::vector<double> by(static_cast<std::size_t>(job_count_), 0);
  for (std::size_t i = 1 + random_.below(3); i > 0; --i) {
    by[random_.below(by.size())] = spread_ * 0.3 * (random_.unit() - 0.5);
  }
  for (const Goal& goal : network_.problem.goals) {
    const auto a = static_cast<std::size_t>(goal.activity);
    const double late = best_directions_.key[a] - goal.due;
    if (late > 0 && random_.chance(0.1)) by[static_cast<std::size_t>(job_[a])] = -late * random_.unit();
  }
  for (std::size_t i = 0; i < keys.size(); ++i) keys[i] += by[static_cast<std::size_t>(job_[i])];
}

void Improvement::try_once(const Directions& directions) {
  Constructed made = construct(network_, bounds_, directions, troubles_);
  if (!made.schedule) {
    if (made.stuck >= 0 && !best_) boost_[static_cast<std::size_t>(made.stuck)] += 1;
    return;
  }
  const Score reached = score(network_.problem, *made.schedule);
  if (best_ && best_->score < reached) return;
  remember(*made.schedule, directions);
  if (best_ && best_->score == reached) return;                       // as good: another order to vary
  if (!violations(network_.problem, *made.schedule).empty()) return;  // never show what the checker objects to
  best_ = Found{std::move(*made.schedule), reached};
}

void Improvement::remember(const Schedule& schedule, const Directions& directions) {
  best_directions_ = directions;
  best_directions_.key = urgency_;
  double low = never, high = -never;
  for (std::size_t i = 0; i < urgency_.size(); ++i) {
    const Assignment& run = schedule.activities[i];
    if (!run.present) continue;
    best_directions_.key[i] = run.start;
    low = std::min<double>(low, run.start);
    high = std::max<double>(high, run.start);
  }
  spread_ = std::max(1.0, high - low);
}

// Every goal at its earliest start, and no set-up that might be shared.
bool Improvement::unbeatable() const {
  if (best_->score.setups > 0) return false;
  const std::vector<Goal>& goals = network_.problem.goals;
  return std::all_of(goals.begin(), goals.end(), [&](const Goal& goal) {
    const Assignment& run = best_->schedule.activities[static_cast<std::size_t>(goal.activity)];
    return run.present && run.start == bounds_.earliest(goal.activity);
  });
}

}  // namespace coatday::solver
