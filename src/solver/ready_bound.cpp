// A lower bound by refutation: the smallest ready time that propagation and the work against capacity do not refute.

#include <algorithm>

#include "solver/bounds.h"
#include "solver/calendar.h"
#include "solver/solve.h"

namespace coatday::solver {
namespace {

// The time in which any activity of a resource may run, with the time before each interval added up.
class Opening {
 public:
  explicit Opening(Intervals intervals) : intervals_(merged(std::move(intervals))) {
    std::int64_t before = 0;
    for (const Interval& i : intervals_) {
      before_.push_back(before);
      before += i.end - i.begin;
    }
  }
  [[nodiscard]] std::int64_t between(Time begin, Time end) const { return begin < end ? until(end) - until(begin) : 0; }

 private:
  [[nodiscard]] std::int64_t until(Time t) const {
    const auto next =
        std::upper_bound(intervals_.begin(), intervals_.end(), t, [](Time time, const Interval& i) { return time < i.begin; });
    if (next == intervals_.begin()) return 0;
    const auto last = std::prev(next);
    return before_[static_cast<std::size_t>(last - intervals_.begin())] + std::min(t, last->end) - last->begin;
  }

  Intervals intervals_;
  std::vector<std::int64_t> before_;
};

struct Job {  // an activity seen from one resource
  int activity = 0;
  std::int64_t work = 0;
};

class Workload {
 public:
  Workload(const Network& network, const Bounds& bounds) : network_(network) {
    for (int r = 0; r < static_cast<int>(network.problem.resources.size()); ++r) {
      Intervals open;
      for (const int a : network.users[r]) add_running(bounds, a, open);
      openings_.emplace_back(std::move(open));
      jobs_.push_back(jobs_on(r, bounds));
    }
  }

  /// Whether within these bounds some resource has more work than it can take.
  [[nodiscard]] bool too_much(const Bounds& bounds) const {
    for (std::size_t r = 0; r < jobs_.size(); ++r) {
      if (too_much(bounds, r)) return true;
    }
    return false;
  }

 private:
  void add_running(const Bounds& bounds, int a, Intervals& open) const {
    const Activity& activity = network_.activity(a);
    for (const bool shared : {false, true}) {
      if (shared && !may_share(activity)) continue;
      for (const Interval& starts : starts_of(activity, shared)) {
        const Time first = std::max(starts.begin, bounds.earliest(a));
        const Time last = std::min(starts.end - 1, bounds.latest(a));
        if (first <= last) open.push_back({first, std::min(end_of(activity, last, shared), network_.problem.horizon)});
      }
    }
  }

  [[nodiscard]] std::vector<Job> jobs_on(int r, const Bounds& bounds) const {
    std::vector<Job> jobs;
    for (const int a : network_.users[r]) {
      if (network_.activity(a).optional) continue;
      std::int64_t amount = 0;
      for (const Demand& demand : network_.demands[a]) amount += demand.resource == r ? demand.amount : 0;
      const std::int64_t work = amount * shortest_run(network_.activity(a), bounds.earliest(a), bounds.latest(a));
      if (work > 0) jobs.push_back({a, work});
    }
    return jobs;
  }

  [[nodiscard]] static Time shortest_run(const Activity& activity, Time first, Time last) {
    const Time alone = shortest_run(activity, false, first, last);
    return may_share(activity) ? std::min(alone, shortest_run(activity, true, first, last)) : alone;
  }

  [[nodiscard]] static Time shortest_run(const Activity& activity, bool shared, Time first, Time last) {
    Time shortest = never;
    for (const Interval& i : starts_of(activity, shared)) {
      for (Time t = std::max(i.begin, first); t < i.end && t <= last; ++t) shortest = std::min(shortest, end_of(activity, t, shared) - t);
    }
    return shortest == never ? 0 : shortest;
  }

  // Work that must lie within [release, deadline) for a sample of deadlines and all releases.
  [[nodiscard]] bool too_much(const Bounds& bounds, std::size_t r) const {
    struct Window {
      Time release, deadline;
      std::int64_t work;
    };
    std::vector<Window> windows;
    std::vector<Time> deadlines;
    for (const Job& job : jobs_[r]) {
      windows.push_back({bounds.earliest(job.activity), latest_end(bounds, job.activity), job.work});
      deadlines.push_back(windows.back().deadline);
    }
    std::sort(windows.begin(), windows.end(), [](const Window& a, const Window& b) { return a.release > b.release; });
    std::sort(deadlines.begin(), deadlines.end());
    deadlines.erase(std::unique(deadlines.begin(), deadlines.end()), deadlines.end());
    const std::size_t step = deadlines.size() / 64 + 1;
    const int capacity = network_.problem.resources[r].capacity;
    for (std::size_t i = 0; i < deadlines.size(); i += step) {
      const Time deadline = deadlines[deadlines.size() - 1 - i];
      std::int64_t work = 0;
      for (const Window& window : windows) {
        if (window.deadline > deadline) continue;
        work += window.work;
        if (work > capacity * openings_[r].between(window.release, deadline)) return true;
      }
    }
    return false;
  }

  [[nodiscard]] Time latest_end(const Bounds& bounds, int a) const {
    const Activity& activity = network_.activity(a);
    const Time alone = end_of(activity, bounds.latest(a), false);
    const Time end = may_share(activity) ? std::max(alone, end_of(activity, bounds.latest(a), true)) : alone;
    return std::min(end, network_.problem.horizon);
  }

  const Network& network_;
  std::vector<Opening> openings_;
  std::vector<std::vector<Job>> jobs_;
};

std::vector<int> required_goals(const Problem& problem) {
  std::vector<int> result;
  for (const Goal& goal : problem.goals) {
    if (!problem.activities[static_cast<std::size_t>(goal.activity)].optional) result.push_back(goal.activity);
  }
  return result;
}

}  // namespace

Time ready_bound(const Problem& problem) {
  const Network network(problem);
  Bounds bounds(network);
  if (!bounds.propagate()) return never;
  const std::vector<int> goals = required_goals(problem);
  if (goals.empty()) return problem.goals.empty() ? 0 : -never;
  Workload workload(network, bounds);
  if (workload.too_much(bounds)) return never;

  const auto refuted = [&](Time ready) {
    Bounds within = bounds;
    for (const int goal : goals) within.start_by(goal, ready);
    return !within.propagate() || workload.too_much(within);
  };
  Time low = -never, high = -never;
  for (const int goal : goals) {
    low = std::max(low, bounds.earliest(goal));
    high = std::max(high, bounds.latest(goal));
  }
  while (low < high) {
    const Time middle = low + (high - low) / 2;
    if (refuted(middle)) {
      low = middle + 1;
    } else {
      high = middle;
    }
  }
  return low;
}

}  // namespace coatday::solver
