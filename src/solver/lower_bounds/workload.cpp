#include "solver/lower_bounds/workload.h"

#include <algorithm>

#include "solver/lower_bounds/holding.h"

namespace coatday::solver {
namespace {

// About `most` of the values, the last one always.
std::vector<Time> sample(std::vector<Time> values, std::size_t most) {
  std::sort(values.begin(), values.end());
  values.erase(std::unique(values.begin(), values.end()), values.end());
  const std::size_t step = values.size() / most + 1;
  std::vector<Time> result;
  for (std::size_t i = 0; i < values.size(); i += step) result.push_back(values[values.size() - 1 - i]);
  return result;
}

// Adds the times in which the activity may run.
void add_running(const Network& network, const Bounds& bounds, int a, Intervals& open) {
  const Activity& activity = network.activity(a);
  for (const bool shared : {false, true}) {
    if (shared && !may_share(activity)) continue;
    for (const Interval& starts : starts_of(activity, shared)) {
      const Time first = std::max(starts.begin, bounds.earliest(a));
      const Time last = std::min(starts.end - 1, bounds.latest(a));
      if (first <= last) open.push_back({first, std::min(end_of(activity, last, shared), network.problem.horizon)});
    }
  }
}

}  // namespace

struct Workload::Window {
  Time release, soonest_end, latest, deadline;
  const Job* job;
  [[nodiscard]] std::int64_t work() const { return std::int64_t{job->length} * job->amount; }
};

Workload::Workload(const Network& network, const Bounds& bounds, const std::vector<Time>& runs, bool thorough)
    : network_(network), run_(runs), thorough_(thorough) {
  for (int r = 0; r < static_cast<int>(network.problem.resources.size()); ++r) {
    std::vector<Job> jobs;
    add_runs(r, jobs);
    add_load(bounds, network.problem.resources[at(r)].capacity, std::move(jobs));
  }
  if (!network.problem.holds.empty()) add_pools(bounds);
}

// Counts the resources of a pool together, so that the choices of holds do not matter.
void Workload::add_pools(const Bounds& bounds) {
  for (const Pool& pool : pools(network_)) {
    std::vector<Job> jobs;
    for (const int r : pool.resources) add_runs(r, jobs);
    const std::size_t runs = jobs.size();
    for (const int h : pool.holds) add_hold(bounds, network_.hold(h), jobs);
    if (jobs.size() > runs) add_load(bounds, pool.capacity, std::move(jobs));
  }
}

void Workload::add_runs(int resource, std::vector<Job>& jobs) const {
  for (const int a : network_.users[resource]) {
    for (const Demand& demand : network_.demands[a]) {
      if (demand.resource == resource && run_[at(a)] > 0) jobs.push_back({a, run_[at(a)], demand.amount, false});
    }
  }
}

void Workload::add_hold(const Bounds& bounds, const Hold& hold, std::vector<Job>& jobs) const {
  if (!network_.certain(hold.first)) return;
  const Time length = shortest_hold(network_, bounds, hold, thorough_);
  const int amount = least_amount(hold);
  if (length > 0 && amount > 0) jobs.push_back({hold.first, length, amount, true});
}

void Workload::add_load(const Bounds& bounds, int capacity, std::vector<Job> jobs) {
  if (jobs.empty()) return;
  Intervals open;
  for (const Job& job : jobs) {
    if (!job.hold) {
      add_running(network_, bounds, job.activity, open);
    } else {
      open.push_back({bounds.earliest(job.activity), bounds.latest(job.activity) + job.length});
    }
  }
  loads_.push_back({capacity, OpenTime(std::move(open)), std::move(jobs)});
}

void Workload::add_clique(const Bounds& bounds, const std::vector<int>& members) {
  std::vector<Job> jobs;
  for (const int a : members) {
    if (run_[at(a)] > 0) jobs.push_back({a, run_[at(a)], 1, false});
  }
  add_load(bounds, 1, std::move(jobs));
}

bool Workload::too_much(const Bounds& bounds) const {
  return std::any_of(loads_.begin(), loads_.end(), [&](const Load& load) {
    const std::vector<Window> all = windows(bounds, load);
    return within_deadlines(all, load) || (thorough_ && load.capacity > 1 && within_stretches(all, load));
  });
}

std::vector<Workload::Window> Workload::windows(const Bounds& bounds, const Load& load) const {
  std::vector<Window> result;
  for (const Job& job : load.jobs) {
    const int a = job.activity;
    const Time release = bounds.earliest(a), latest = bounds.latest(a);
    const Time soonest = job.hold ? release + job.length : bounds.soonest_end(a);
    const Time deadline = job.hold ? latest + job.length : std::min(bounds.last_end(a), network_.problem.horizon);
    result.push_back({release, soonest, latest, deadline, &job});
  }
  std::sort(result.begin(), result.end(), [](const Window& a, const Window& b) { return a.release > b.release; });
  return result;
}

// Counts jobs wholly within [release, deadline), for a sample of deadlines and for all releases.
bool Workload::within_deadlines(const std::vector<Window>& windows, const Load& load) const {
  std::vector<Time> deadlines;
  for (const Window& window : windows) deadlines.push_back(window.deadline);
  for (const Time deadline : sample(std::move(deadlines), 64)) {
    std::int64_t work = 0;
    for (const Window& window : windows) {
      if (window.deadline > deadline) continue;
      work += window.work();
      if (work > load.capacity * load.open_time.between(window.release, deadline)) return true;
    }
  }
  return false;
}

// Counts the part of each job that must lie within [begin, end), for a sample of both.
bool Workload::within_stretches(const std::vector<Window>& windows, const Load& load) const {
  std::vector<Time> begins, ends;
  for (const Window& window : windows) {
    begins.push_back(window.release);
    begins.push_back(window.latest);
    ends.push_back(window.deadline);
    ends.push_back(window.soonest_end);
  }
  begins = sample(std::move(begins), 40);
  ends = sample(std::move(ends), 40);
  for (const Time begin : begins) {
    for (const Time end : ends) {
      if (begin >= end) continue;
      std::int64_t work = 0;
      for (const Window& w : windows) {
        const Time inside = std::min({w.job->length, w.soonest_end - begin, end - w.latest, end - begin});
        if (inside > 0) work += std::int64_t{inside} * w.job->amount;
      }
      if (work > load.capacity * load.open_time.between(begin, end)) return true;
    }
  }
  return false;
}

}  // namespace coatday::solver
