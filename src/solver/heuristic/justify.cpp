#include "solver/heuristic/justify.h"

#include <algorithm>

#include "solver/base/calendar.h"
#include "solver/base/partial_schedule.h"

namespace coatday::solver {
namespace {

class Justifier {
 public:
  Justifier(const Network& network, const Bounds& bounds, const Schedule& schedule) : network_(network), bounds_(bounds), placed_(network) {
    for (int a = 0; a < network.size; ++a) {
      const Assignment& run = schedule.activities[at(a)];
      starts_.push_back(run.present ? run.start : bounds.earliest(a));
      if (run.present) placed_.place({a, run.start, run.end, run.shared});
    }
    for (const Goal& goal : network.problem.goals) fixed_.push_back(goal.activity);
    std::sort(fixed_.begin(), fixed_.end());
  }

  Keys run() {
    std::vector<std::pair<Time, int>> by_end;
    for (int a = 0; a < network_.size; ++a) {
      if (placed_.placed(a) && !std::binary_search(fixed_.begin(), fixed_.end(), a)) by_end.emplace_back(-placed_.run(a).end, a);
    }
    std::sort(by_end.begin(), by_end.end());
    for (const auto& [end, a] : by_end) move(a);
    return starts_;
  }

 private:
  void move(int a) {
    const Assignment was = placed_.run(a);
    placed_.remove(a);
    const Time start = latest(a, was);
    placed_.place({a, start, end_of(network_.activity(a), start, was.shared), was.shared});
    starts_[at(a)] = start;
  }

  // The latest start from `was` on that lags, calendar and resources allow.
  [[nodiscard]] Time latest(int a, const Assignment& was) const {
    const Activity& activity = network_.activity(a);
    const Intervals& starts = starts_of(activity, was.shared);
    Time t = latest_by_lags(a, was);
    while (t > was.start) {
      t = previous_allowed(starts, t);
      if (t <= was.start) break;
      const Time blocked = blocked_from(a, t, end_of(activity, t, was.shared));
      if (blocked >= unreachable) return t;
      t = latest_of(was.shared ? activity.end_shared : activity.end, blocked, was.start, t - 1);
    }
    return was.start;
  }

  [[nodiscard]] Time latest_by_lags(int a, const Assignment& was) const {
    const Activity& activity = network_.activity(a);
    Time t = std::max(was.start, bounds_.latest(a));
    for (const int i : network_.min_out[a]) {
      const MinimumLag& lag = network_.min_lag(i);
      if (!placed_.placed(lag.to)) continue;
      const Time reach = latest_of(lag.bound, placed_.run(lag.to).start, value_of(activity, lag.from.edge, was.start, was.shared),
                                   value_of(activity, lag.from.edge, t, was.shared));
      t = std::max(was.start, latest_of(activity, lag.from.edge, was.shared, reach, was.start, t));
    }
    for (const int i : network_.max_in[a]) {
      const MaximumLag& lag = network_.max_lag(i);
      if (network_.force[at(i)] == Force::none || !placed_.placed(lag.from.activity)) continue;
      t = std::max(was.start, std::min(t, value_of(lag.bound, placed_.point(lag.from))));
    }
    return t;
  }

  // Where the first stretch of [start, end) begins in which some resource has too little left; `unreachable` if there is none.
  [[nodiscard]] Time blocked_from(int a, Time start, Time end) const {
    Time first = unreachable;
    for (const Demand& demand : network_.demands[a]) {
      const int spare = network_.problem.resources[at(demand.resource)].capacity - demand.amount;
      if (const auto blocked = placed_.use(demand.resource).first_above(spare, start, end)) first = std::min(first, blocked->begin);
    }
    return first;
  }

  const Network& network_;
  const Bounds& bounds_;
  PartialSchedule placed_;
  Keys starts_;
  std::vector<int> fixed_;
};

}  // namespace

Keys justified(const Network& network, const Bounds& bounds, const Schedule& schedule) {
  return Justifier(network, bounds, schedule).run();
}

}  // namespace coatday::solver
