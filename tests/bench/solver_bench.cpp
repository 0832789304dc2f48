// Chains of coats through a small shop: two people, one bench for coating, drying places, a recoat window with a scuff as its remedy, and dust
// kept away from wet film. 5-minute steps.

#include <benchmark/benchmark.h>

#include <algorithm>

#include "solver/solve.h"

namespace {

using namespace coatday::solver;

constexpr Time hour = 12;
constexpr Time day = 24 * hour;

enum Shop { people, bench, racks };

class Jobs {
 public:
  Jobs(int activities, int days) {
    p_.horizon = days * day;
    for (int d = 0; d < days; ++d) {
      if (d % 7 < 5) open_.push_back({d * day + 8 * hour, d * day + 16 * hour});
    }
    p_.resources = {{2, 0}, {1, 1}, {12, 2}};
    p_.exclusions.emplace_back();
    const Time slow = 5 * day;
    std::vector<Time> dry(static_cast<std::size_t>(p_.horizon));
    for (Time t = 0; t < p_.horizon; ++t)
      dry[static_cast<std::size_t>(t)] = t + 6 * hour + (t / slow % 2 == 0 ? 0 : (slow - t % slow) / 60);
    for (std::size_t t = 1; t < dry.size(); ++t) dry[t] = std::max(dry[t], dry[t - 1]);
    dry_ = table(0, std::move(dry));
    for (int job = 0; static_cast<int>(p_.activities.size()) < activities; ++job) add_job(job);
  }

  Problem take() { return std::move(p_); }

 private:
  int add(Time length, bool coat, bool optional = false) {
    Activity a;
    for (const Interval& shift_hours : open_) a.starts.push_back({shift_hours.begin, shift_hours.end - length + 1});
    a.end = shift(length);
    a.demands.push_back({people, 1});
    if (coat) a.demands.push_back({bench, 1});
    a.optional = optional;
    if (coat) {
      a.family = 0;
      a.end_shared = shift(length - 2);
    }
    p_.activities.push_back(std::move(a));
    return static_cast<int>(p_.activities.size()) - 1;
  }

  void add_job(int job) {
    int before = add(6 + job % 5, false);
    p_.exclusions[0].right.push_back({before, 0, nullptr});
    for (int coats = 0; coats < 3; ++coats) {
      const int coat = add(4 + job % 3, true);
      p_.exclusions[0].left.push_back({coat, 3, compose(shift(12), p_.activities[static_cast<std::size_t>(coat)].end)});
      p_.minimum_lags.push_back({{before, Edge::end}, coat, coats == 0 ? nullptr : dry_, 10});
      if (coats > 0) {
        const int scuff = add(2, false, true);
        p_.maximum_lags.push_back({{before, Edge::end}, coat, compose(shift(10 * hour), dry_), 11, scuff});
        p_.minimum_lags.push_back({{before, Edge::end}, scuff, dry_, 12});
        p_.minimum_lags.push_back({{scuff, Edge::end}, coat, nullptr, 13});
        p_.holds.push_back({before, {coat}, {before, Edge::end}, dry_, {{racks, 1}}, 14});
      }
      before = coat;
    }
    const int deliver = add(3, false);
    p_.minimum_lags.push_back({{before, Edge::end}, deliver, compose(shift(day), dry_), 15});
    p_.holds.push_back({before, {deliver}, {before, Edge::end}, dry_, {{racks, 1}}, 14});
    p_.goals.push_back({deliver, (4 + job / 3) * day, 1, 20});
  }

  Problem p_;
  Intervals open_;
  Function dry_;
};

Problem chains(int activities) { return Jobs(activities, activities < 500 ? 40 : activities < 2000 ? 140 : 600).take(); }

void solve_chains(benchmark::State& state, int activities, int passes) {
  const Problem problem = chains(activities);
  Limits limits;
  limits.passes = passes;
  double ready = 0, lateness = 0;
  for (auto _ : state) {
    const Outcome outcome = solve(problem, limits);
    if (const auto* found = std::get_if<Found>(&outcome)) {
      ready = found->score.ready;
      lateness = found->score.lateness;
    }
  }
  state.counters["ready"] = ready;
  state.counters["lateness"] = lateness;
}

void bound_chains(benchmark::State& state, int activities) {
  const Problem problem = chains(activities);
  Time bound = 0;
  for (auto _ : state) bound = ready_bound(problem);
  state.counters["bound"] = bound;
}

BENCHMARK_CAPTURE(solve_chains, 50_activities_40_passes, 50, 40)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(solve_chains, 500_activities_40_passes, 500, 40)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(solve_chains, 1000_activities_40_passes, 1000, 40)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(solve_chains, 5000_activities_0_passes, 5000, 0)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(bound_chains, 50_activities, 50)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(bound_chains, 500_activities, 500)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(bound_chains, 5000_activities, 5000)->Unit(benchmark::kMillisecond);

}  // namespace
