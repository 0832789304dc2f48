#include "solver/heuristic/incumbent.h"

#include <algorithm>

#include "solver/base/layout.h"
#include "solver/base/violations.h"

namespace coatday::solver {

bool Incumbent::offer(Schedule schedule, const Score& score) {
  if (best_ && best_->score <= score) return false;
  if (schedule.hold_stretch.empty()) {
    auto stretches = lay_out(network_.problem, schedule);
    if (!stretches) return false;
    schedule.hold_stretch = std::move(*stretches);
  }
  if (!violations(network_.problem, schedule).empty()) return false;  // the judge must agree before anybody sees it
  const bool shorter = !best_ || score.lateness < best_->score.lateness || score.ready < best_->score.ready;
  best_ = Found{std::move(schedule), score, ready_bound_, false, {}};
  if (shorter) exhausted_ = false;
  judge();
  report();
  return true;
}

void Incumbent::bound(Time ready, double lateness) {
  const bool news = ready > ready_bound_;
  ready_bound_ = std::max(ready_bound_, ready);
  lateness_bound_ = std::max(lateness_bound_, lateness);
  judge();
  if (news) report();
}

void Incumbent::bound_goals(std::vector<Time> from) { goals_from_ = std::move(from); }

void Incumbent::exhausted() {
  exhausted_ = true;
  judge();
  report();
}

void Incumbent::judge() {
  if (!best_) return;
  best_->ready_bound = ready_bound_;
  best_->goals_from = goals_from_;
  const bool waits = best_->score.waits > 0 && best_->score.lateness <= lateness_bound_;
  best_->proven = !waits && (exhausted_ || (best_->score.lateness <= lateness_bound_ && same_day(ready_bound_, best_->score.ready)));
}

bool Incumbent::same_day(Time earlier, Time later) const {
  if (later <= earlier) return true;
  if (!network_.problem.presence) return false;
  const std::vector<Time>& days = network_.problem.presence->days;
  return std::upper_bound(days.begin(), days.end(), earlier) == std::upper_bound(days.begin(), days.end(), later);
}

void Incumbent::report() const {
  if (best_ && budget_.limits().progress) budget_.limits().progress({best_->score, ready_bound_, budget_.seconds(), best_->proven});
}

}  // namespace coatday::solver
