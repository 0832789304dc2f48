// Public instances of project scheduling with minimum and maximum lags, and the readers of their files.

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <sstream>

#include "solver/solve.h"
#include "tests/bench/rcpsp_max/instance.h"
#include "tests/support/source_dir.h"

namespace coatday::solver::test {
namespace {

using bench::Instance;

const std::string folder = source_dir() + "/tests/solver/rcpsp_max/";

std::string text_of(const std::string& file) {
  std::ifstream in(folder + file, std::ios::binary);
  EXPECT_TRUE(in) << file;
  return {std::istreambuf_iterator<char>(in), {}};
}

Instance instance_of(const std::string& file) {
  const std::string text = text_of(file);
  const auto instance = file.back() == 'm' ? bench::read_sm(text) : bench::read_sch(text);
  if (!instance) ADD_FAILURE() << file << ":" << instance.error().line << ": " << instance.error().what;
  return instance.value_or(Instance{});
}

struct Known {
  std::string file, status, makespan;
};

std::vector<Known> best_known() {
  std::istringstream lines(text_of("best_known.csv"));
  std::vector<Known> result;
  std::string line;
  std::getline(lines, line);
  while (std::getline(lines, line)) {
    const std::size_t first = line.find(','), second = line.find(',', first + 1);
    result.push_back({line.substr(0, first), line.substr(first + 1, second - first - 1), line.substr(second + 1)});
  }
  return result;
}

// By the instance alone, time by time.
void expect_kept(const Instance& instance, const Schedule& schedule, const std::string& file) {
  const auto start = [&](std::size_t a) { return schedule.activities[a].start; };
  for (const bench::Arc& arc : instance.arcs) {
    EXPECT_GE(start(static_cast<std::size_t>(arc.to)) - start(static_cast<std::size_t>(arc.from)), arc.lag) << file;
  }
  for (std::size_t r = 0; r < instance.capacities.size(); ++r) {
    for (Time t = 0; t <= start(instance.durations.size() - 1); ++t) {
      int used = 0;
      for (std::size_t a = 0; a < instance.durations.size(); ++a) {
        if (start(a) <= t && t < start(a) + instance.durations[a]) used += instance.demands[a][r];
      }
      EXPECT_LE(used, instance.capacities[r]) << file << ", resource " << r << " at " << t;
    }
  }
}

TEST(RcpspMax, PublishedOptima) {
  int optimal = 0, infeasible = 0;
  for (const Known& known : best_known()) {
    const Instance instance = instance_of(known.file);
    Limits limits;
    limits.work = 20'000;
    const Outcome outcome = solve(bench::problem_of(instance), limits);
    if (known.status == "infeasible") {
      EXPECT_TRUE(std::holds_alternative<Contradiction>(outcome)) << known.file;
      ++infeasible;
      continue;
    }
    ASSERT_TRUE(std::holds_alternative<Found>(outcome)) << known.file;
    const Found& found = std::get<Found>(outcome);
    EXPECT_EQ(found.score.ready, std::stoi(known.makespan)) << known.file;
    EXPECT_TRUE(found.proven) << known.file;
    EXPECT_EQ(found.ready_bound, found.score.ready) << known.file;
    expect_kept(instance, found.schedule, known.file);
    ++optimal;
  }
  EXPECT_EQ(optimal, 7);
  EXPECT_EQ(infeasible, 4);
}

TEST(RcpspMax, TheQuickCallIsNeverBetterThanTheOptimum) {
  for (const Known& known : best_known()) {
    const Problem problem = bench::problem_of(instance_of(known.file));
    const Outcome outcome = solve(problem);
    if (known.status == "infeasible") {
      EXPECT_FALSE(std::holds_alternative<Found>(outcome)) << known.file;
      continue;
    }
    EXPECT_LE(ready_bound(problem), std::stoi(known.makespan)) << known.file;
    if (const auto* found = std::get_if<Found>(&outcome)) {
      EXPECT_GE(found->score.ready, std::stoi(known.makespan)) << known.file;
      EXPECT_LE(found->ready_bound, std::stoi(known.makespan)) << known.file;
    }
  }
}

TEST(RcpspMax, ReadsLagsDemandsAndCapacities) {
  const auto read = bench::read_sch("1 2 0 0\r\n0 1 1 1 [3]\n\n1 1 2 2 0 [4] [-9]\n2 1 0\n0 1 0 0 0\n1 1 4 2 1\n2 1 0 0 0\n5 6\n");
  ASSERT_TRUE(read) << read.error().line << read.error().what;
  EXPECT_EQ(read->durations, (std::vector<Time>{0, 4, 0}));
  EXPECT_EQ(read->demands[1], (std::vector<int>{2, 1}));
  EXPECT_EQ(read->capacities, (std::vector<int>{5, 6}));
  ASSERT_EQ(read->arcs.size(), 3U);
  EXPECT_EQ(read->arcs[2].to, 0);
  EXPECT_EQ(read->arcs[2].lag, -9);
  const Problem problem = bench::problem_of(*read);
  EXPECT_EQ(problem.horizon, 3 + 4);
  EXPECT_EQ(problem.minimum_lags.size(), 2U);
  EXPECT_EQ(problem.maximum_lags.size(), 1U);
  EXPECT_EQ(std::get<Found>(solve(problem)).score.ready, 7);
}

TEST(RcpspMax, PlainPrecedenceIsFinishToStart) {
  const Instance instance = instance_of("j30_12_2.sm");
  EXPECT_EQ(instance.durations.size(), 32U);
  EXPECT_EQ(instance.durations[1], 8);
  EXPECT_EQ(instance.demands[1], (std::vector<int>{0, 9, 7, 7}));
  for (const bench::Arc& arc : instance.arcs) EXPECT_EQ(arc.lag, instance.durations[static_cast<std::size_t>(arc.from)]);
}

TEST(RcpspMax, BadFilesAreToldByLine) {
  const auto trouble = [](const char* text) {
    const auto read = bench::read_sch(text);
    return read ? "none" : std::to_string(read.error().line) + ": " + read.error().what;
  };
  EXPECT_EQ(trouble(""), "1: the file ends before the number of activities and resources");
  EXPECT_EQ(trouble("1 1 2 0\n"), "1: only renewable resources are known");
  EXPECT_EQ(trouble("0 x 0 0\n"), "1: 'x' is not a whole number");
  EXPECT_EQ(trouble("0 1 0 0\n0 1 1 1\n"), "2: so many successors and lags are expected: 1");
  EXPECT_EQ(trouble("0 1 0 0\n0 1 1 1 3\n"), "2: a lag is not in brackets");
  EXPECT_EQ(trouble("0 1 0 0\n0 1 1 7 [3]\n"), "2: '7' is out of range");
  EXPECT_EQ(trouble("0 1 0 0\n\n0 2 0\n"), "3: an activity has more than one mode");
  EXPECT_EQ(trouble("0 1 0 0\n1 1 0\n"), "2: activity 0 is expected here");
  EXPECT_EQ(trouble("0 1 0 0\n0 1 0\n1 1 0\n0 1 0 0\n1 1 0 0\n"), "5: the file ends before the capacities");
}

}  // namespace
}  // namespace coatday::solver::test
