// Planning of 1, 10 and 100 pieces, each a board with four legs, and 24 doors on few racks.

#include <benchmark/benchmark.h>

#include "checker/check.h"
#include "planner/make/make_plan.h"
#include "tests/support/jobs.h"

namespace {

using namespace coatday;

void plan_pieces(benchmark::State& state) {
  tests::JobKnobs knobs;
  knobs.pieces = static_cast<int>(state.range(0));
  knobs.people = 2;
  const job::Job job = tests::make_job(knobs);
  std::size_t events = 0;
  for (auto _ : state) events = planner::make_plan(job, {tests::monday()}).events.size();
  state.counters["events"] = static_cast<double>(events);
  state.SetComplexityN(state.range(0));
}
BENCHMARK(plan_pieces)->Arg(1)->Arg(10)->Arg(100)->Unit(benchmark::kMillisecond)->Complexity();

void plan_doors(benchmark::State& state) {
  tests::JobKnobs knobs;
  knobs.doors = static_cast<int>(state.range(0));
  const job::Job job = tests::make_job(knobs);
  for (auto _ : state) benchmark::DoNotOptimize(planner::make_plan(job, {tests::monday()}));
}
BENCHMARK(plan_doors)->Arg(24)->Arg(96)->Unit(benchmark::kMillisecond);

void check_pieces(benchmark::State& state) {
  tests::JobKnobs knobs;
  knobs.pieces = static_cast<int>(state.range(0));
  const job::Job job = tests::make_job(knobs);
  const job::Plan plan = planner::make_plan(job, {tests::monday()});
  for (auto _ : state) benchmark::DoNotOptimize(checker::check(plan, job));
}
BENCHMARK(check_pieces)->Arg(1)->Arg(10)->Arg(100)->Unit(benchmark::kMillisecond);

}  // namespace
