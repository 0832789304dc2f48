// Plans one generated order and prints a line of CSV: shop, pieces, effort in seconds (0: the quick plan), seconds taken, events, days until
// all is ready, gap to the proven bound in percent, proven, peak memory in MB. Sizes and times are invented.

#include <sys/resource.h>

#include <CLI/CLI.hpp>
#include <chrono>
#include <cstdio>
#include <random>

#include "checker/check.h"
#include "planner/make/make_plan.h"
#include "tests/support/jobs.h"

namespace {

using namespace coatday;

/// Boards of many sizes, each with four legs.
job::Job generate(int pieces, bool roomy, unsigned seed) {
  tests::JobKnobs knobs;
  knobs.pieces = pieces;
  knobs.people = 2;
  job::Job job = tests::make_job(knobs);
  std::mt19937 random(seed);
  const auto between = [&](double least, double most) { return least + (most - least) * static_cast<double>(random() % 1000) / 1000; };
  for (job::OrderPiece& piece : job.order.pieces) {
    piece.piece.parts[0].shape = piece::Board{Metres(between(0.5, 1.6)), Metres(between(0.3, 0.8)), Metres(0.025)};
    piece.piece.parts[1].shape = piece::TaperedLeg{Metres(between(0.4, 0.8)), Metres(0.05), Metres(0.03)};
  }
  for (shop::DryingPlace& place : job.shop.places) place.count *= roomy ? 10 : 2;
  return job;
}

double megabytes() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024;
}

}  // namespace

int main(int argc, char** argv) {
  CLI::App app("Plans one generated order.");
  int pieces = 1;
  double seconds = 0;
  bool narrow = false;
  unsigned seed = 1;
  app.add_option("--pieces", pieces)->check(CLI::Range(1, 2000));
  app.add_option("--seconds", seconds);
  app.add_flag("--narrow", narrow, "so few drying places that they decide the plan");
  app.add_option("--seed", seed);
  CLI11_PARSE(app, argc, argv);
  const job::Job job = generate(pieces, !narrow, seed);
  job::Request request{tests::monday()};
  request.seconds = seconds;
  const auto begin = std::chrono::steady_clock::now();
  const job::Plan plan = planner::make_plan(job, request);
  const double taken = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
  if (plan.status != job::Status::planned || !plan.ready || !plan.ready_bound) {
    std::printf("%s,%d,%g,%.2f,,,,,%.0f\n", narrow ? "narrow" : "roomy", pieces, seconds, taken, megabytes());
    return 1;
  }
  const double ready = Hours(*plan.ready - plan.from).count(), bound = Hours(*plan.ready_bound - plan.from).count();
  std::printf("%s,%d,%g,%.2f,%zu,%.1f,%.1f,%s,%.0f\n", narrow ? "narrow" : "roomy", pieces, seconds, taken, plan.events.size(), ready / 24,
              100 * (ready - bound) / ready, plan.proven ? "yes" : "no", megabytes());
  for (const checker::Breach& breach : checker::check(plan, job)) std::fprintf(stderr, "the checker objects: %s\n", breach.message.c_str());
  return 0;
}
