// Energetic reasoning alone: against its definition and against all placements of a few jobs; and its reasons within the search.

#include "solver/clause_learning/energetic.h"

#include <gtest/gtest.h>

#include <functional>
#include <random>

#include "tests/solver/build.h"
#include "tests/solver/verify.h"

namespace coatday::solver::test {
namespace {

struct Job {
  Time earliest, latest, length;
  int amount;
};
struct Jobs {
  int capacity = 1;
  std::vector<Job> all;
};

Jobs any_jobs(unsigned seed) {
  std::mt19937 random(seed);
  const auto upto = [&](int most) { return static_cast<int>(random() % static_cast<unsigned>(most + 1)); };
  Jobs jobs{2 + upto(2), {}};
  const int count = 3 + upto(2);
  for (int i = 0; i < count; ++i) {
    const Time earliest = upto(3);
    jobs.all.push_back({earliest, earliest + upto(4), 1 + upto(4), 1 + upto(jobs.capacity - 1)});
  }
  return jobs;
}

// Whether some stretch of time is asked for more than it holds: of each job, the least over its starts.
bool overloaded(const Jobs& jobs) {
  for (Time begin = 0; begin < 14; ++begin) {
    for (Time end = begin + 1; end < 14; ++end) {
      int work = 0;
      for (const Job& j : jobs.all) {
        Time least = unreachable;
        for (Time s = j.earliest; s <= j.latest; ++s)
          least = std::min(least, std::max(0, std::min(s + j.length, end) - std::max(s, begin)));
        work += least * j.amount;
      }
      if (work > jobs.capacity * (end - begin)) return true;
    }
  }
  return false;
}

// The earliest and latest start of each over all placements; none: there is no placement.
std::optional<Jobs> placed(const Jobs& jobs) {
  Jobs result = jobs;
  for (Job& j : result.all) j = {unreachable, -unreachable, j.length, j.amount};
  std::vector<int> use(14, 0);
  std::vector<Time> starts;
  const std::function<void()> place = [&] {
    const std::size_t i = starts.size();
    for (std::size_t k = 0; i == jobs.all.size() && k < i; ++k) {
      result.all[k].earliest = std::min(result.all[k].earliest, starts[k]);
      result.all[k].latest = std::max(result.all[k].latest, starts[k]);
    }
    if (i == jobs.all.size()) return;
    const Job& j = jobs.all[i];
    const auto take = [&](Time from, int amount) {
      bool fits = true;
      for (Time t = from; t < from + j.length; ++t) fits = (use[static_cast<std::size_t>(t)] += amount) <= jobs.capacity && fits;
      return fits;
    };
    for (Time s = j.earliest; s <= j.latest; ++s) {
      starts.push_back(s);
      if (take(s, j.amount)) place();
      take(s, -j.amount);
      starts.pop_back();
    }
  };
  place();
  return result.all.front().earliest < unreachable ? std::optional(result) : std::nullopt;
}

// What the propagator alone leaves of the starts; none where it finds that nothing fits.
std::optional<Jobs> propagated(const Jobs& jobs, bool thorough) {
  clause_learning::Engine engine;
  std::vector<clause_learning::Energetic::Job> modelled;
  for (const Job& j : jobs.all) modelled.push_back({{engine.add(j.earliest, j.latest), j.length}, j.amount, {}});
  auto energetic = std::make_unique<clause_learning::Energetic>(jobs.capacity, modelled);
  const auto wakes = energetic->wakes();
  engine.add(std::move(energetic), wakes);
  if (thorough) engine.leave_nothing_out();
  if (!engine.begin()) return std::nullopt;
  Jobs left = jobs;
  for (std::size_t i = 0; i < jobs.all.size(); ++i) {
    left.all[i].earliest = engine.trail.low(modelled[i].task.start);
    left.all[i].latest = engine.trail.high(modelled[i].task.start);
  }
  return left;
}

// How many starts `some` loses that `all` has.
Time lost(const Jobs& all, const Jobs& some) {
  Time sum = 0;
  for (std::size_t i = 0; i < all.all.size(); ++i) {
    sum += std::max(0, some.all[i].earliest - all.all[i].earliest) + std::max(0, all.all[i].latest - some.all[i].latest);
  }
  return sum;
}

TEST(Energetic, IsWhatItSaysAndTrueOfAllPlacements) {
  Time refuted = 0, moved = 0;
  for (unsigned seed = 0; seed < 4000; ++seed) {
    const Jobs jobs = any_jobs(seed);
    const auto truth = placed(jobs);
    for (const bool thorough : {false, true}) {
      const auto left = propagated(jobs, thorough);
      EXPECT_TRUE(left || !truth) << seed;
      EXPECT_TRUE(!truth || !left || lost(*truth, *left) == 0) << seed;
      EXPECT_FALSE(thorough && left && (overloaded(jobs) || overloaded(*left))) << seed;
      refuted += left ? 0 : 1;
      moved += left ? lost(jobs, *left) : 0;
    }
  }
  EXPECT_GT(refuted, 1000);
  EXPECT_GT(moved, 500);
}

// Five of length 3 in seven steps for two: none is sure to run at any time, but together they are too much.
Problem five_in(Time steps) {
  Problem p;
  p.horizon = 40;
  p.resources = {{2, -1}};
  for (int i = 0; i < 5; ++i) add(p, {0, steps - 2}, 3, {{0, 1}});
  return p;
}

TEST(Energetic, SeesWhatNoPointInTimeShows) {
  Problem p = five_in(7);
  EXPECT_TRUE(Search(p).solver().dead());
  p = five_in(9);
  EXPECT_FALSE(Search(p).solver().dead());
}

// With other branches to take what the resource is used by, each reason needs the branch, too.
TEST(Energetic, ReasonsHoldWithinTheSearch) {
  long explained = 0;
  for (unsigned seed = 0; seed < 300; ++seed) {
    std::mt19937 random(seed);
    const auto upto = [&](int most) { return static_cast<int>(random() % static_cast<unsigned>(most + 1)); };
    Problem p;
    p.horizon = 30;
    p.resources = {{3, -1}};
    for (int i = 0; i < 8; ++i) {
      const Time from = upto(4);
      add(p, {from, from + 4 + upto(6)}, 2 + upto(3), {{0, 1 + upto(1)}});
    }
    p.alternatives.push_back({{{0, 1}, {2}}, -1});
    p.goals.push_back({7, unreachable, 1, -1});
    Search search(p);
    Verifier verifier(p, search.solver());
    (void)search.improve(std::nullopt, nullptr, {200, 0, nullptr});
    EXPECT_EQ(verifier.complaints(), std::vector<std::string>{}) << seed;
    explained += verifier.tally().explanations;
  }
  EXPECT_GT(explained, 1000);
}

}  // namespace
}  // namespace coatday::solver::test
