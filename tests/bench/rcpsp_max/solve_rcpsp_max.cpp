// Solves RCPSP/max instances one after the other; one CSV row each. A bad file ends the program with 2.

#include <CLI/CLI.hpp>
#include <cstdio>
#include <fstream>
#include <iterator>

#include "solver/solve.h"
#include "tests/bench/rcpsp_max/instance.h"

namespace {

using namespace coatday::solver;

tl::expected<bench::Instance, bench::BadFile> read(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) return tl::make_unexpected(bench::BadFile{1, "cannot be opened"});
  const std::string text{std::istreambuf_iterator<char>(file), {}};
  const bool plain = path.size() > 3 && path.compare(path.size() - 3, 3, ".sm") == 0;
  return plain ? bench::read_sm(text) : bench::read_sch(text);
}

struct Row {
  std::string status = "unknown";
  std::string objective, bound, starts;
};

Row row_of(const Outcome& outcome) {
  Row row;
  if (std::holds_alternative<Contradiction>(outcome)) {
    row.status = "infeasible";
  } else if (const auto* found = std::get_if<Found>(&outcome)) {
    row.status = found->proven ? "optimal" : "feasible";
    row.objective = std::to_string(found->score.ready);
    row.bound = std::to_string(found->ready_bound);
    for (const Assignment& run : found->schedule.activities) row.starts += (row.starts.empty() ? "" : " ") + std::to_string(run.start);
  } else {
    row.bound = std::to_string(std::get<NotFound>(outcome).ready_bound);
  }
  return row;
}

// Nothing that solve() would name where there is no schedule: its time is to be that of the proof.
Problem untagged(Problem problem) {
  for (Activity& a : problem.activities) a.tag = -1;
  for (MinimumLag& lag : problem.minimum_lags) lag.tag = -1;
  for (MaximumLag& lag : problem.maximum_lags) lag.tag = -1;
  return problem;
}

void solve_one(const std::string& name, const bench::Instance& instance, const Limits& limits) {
  const Stopwatch stopwatch(limits.clock);
  const Problem problem = untagged(bench::problem_of(instance));
  const Row row = row_of(solve(problem, limits));
  const double seconds = stopwatch.seconds();
  std::printf("%s,%s,%s,%s,%.3f,%s\n", name.c_str(), row.status.c_str(), row.objective.c_str(), row.bound.c_str(), seconds,
              row.starts.c_str());
  std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
  CLI::App app{"Solves RCPSP/max instances (.sch of ProGen/max, .sm of ProGen). CSV on standard output."};
  app.name("solve_rcpsp_max");
  Limits limits;
  limits.seconds = 10;
  std::vector<std::string> files;
  app.add_option("--seconds", limits.seconds, "for each instance, of wall clock [10]")->check(CLI::Range(0.0, 1e6));
  app.add_flag_callback(
      "--processor-time", [&] { limits.clock = Clock::processor; }, "count seconds of the processor instead: other load matters less");
  app.add_option("--seed", limits.seed, "of the random numbers [1]");
  app.add_option("files", files, "instances")->required();
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    return app.exit(error) == 0 ? 0 : 2;
  }
  std::puts("instance,status,objective,bound,seconds,starts");
  for (const std::string& path : files) {
    const auto instance = read(path);
    if (!instance) {
      std::fprintf(stderr, "%s:%d: error: %s\n", path.c_str(), instance.error().line, instance.error().what.c_str());
      return 2;
    }
    solve_one(path, *instance, limits);
  }
  return 0;
}
