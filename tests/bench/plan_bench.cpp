// Planning of 1, 10 and 100 pieces, each a board with four legs, and 24 doors on few racks.

#include <benchmark/benchmark.h>

#include "plan/check.h"
#include "plan/planner.h"
#include "tests/support/jobs.h"

namespace {

using namespace coatday;

void plan_pieces(benchmark::State& state) {
  tests::JobKnobs knobs;
  knobs.pieces = static_cast<int>(state.range(0));
  knobs.people = 2;
  const plan::Job job = tests::make_job(knobs);
  std::size_t events = 0;
  for (auto _ : state) events = plan::make_plan(job, {tests::monday()}).events.size();
  state.counters["events"] = static_cast<double>(events);
  state.SetComplexityN(state.range(0));
}
BENCHMARK(plan_pieces)->Arg(1)->Arg(10)->Arg(100)->Unit(benchmark::kMillisecond)->Complexity();

void plan_doors(benchmark::State& state) {
  tests::JobKnobs knobs;
  knobs.doors = static_cast<int>(state.range(0));
  const plan::Job job = tests::make_job(knobs);
  for (auto _ : state) benchmark::DoNotOptimize(plan::make_plan(job, {tests::monday()}));
}
BENCHMARK(plan_doors)->Arg(24)->Arg(96)->Unit(benchmark::kMillisecond);

void check_pieces(benchmark::State& state) {
  tests::JobKnobs knobs;
  knobs.pieces = static_cast<int>(state.range(0));
  const plan::Job job = tests::make_job(knobs);
  const plan::Plan plan = plan::make_plan(job, {tests::monday()});
  for (auto _ : state) benchmark::DoNotOptimize(plan::check(plan, job));
}
BENCHMARK(check_pieces)->Arg(1)->Arg(10)->Arg(100)->Unit(benchmark::kMillisecond);

}  // namespace
