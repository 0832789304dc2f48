// The exact search against Gecode, a general-purpose constraint solver, on small problems that both read for themselves: whether there is a
// schedule, the least lateness and, with that, the earliest ready time. Gecode 6.2 runs as Debian's fzn-gecode.

#include <gtest/gtest.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <memory>
#include <random>

#include "solver/clause_learning/search.h"
#include "tests/gecode/flatzinc.h"
#include "tests/solver/any_problem.h"
#include "tests/solver/random_problem.h"

namespace coatday::solver::test {
namespace {

namespace fs = std::filesystem;

struct Answer {
  bool complete = false;  ///< searched to the end
  std::optional<long> objective;
};

class Gecode : public testing::Test {
 protected:
  void SetUp() override {
    std::string pattern = (fs::temp_directory_path() / "coatday-XXXXXX").string();
    ASSERT_NE(mkdtemp(pattern.data()), nullptr);
    folder_ = pattern;
  }
  void TearDown() override { fs::remove_all(folder_); }

  Answer ask(const Problem& problem) const {
    const fs::path file = folder_ / "problem.fzn";
    std::ofstream(file) << flatzinc_of(problem);
    Answer answer;
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> output(popen(("fzn-gecode " + file.string()).c_str(), "r"), pclose);
    char line[256];
    while (std::fgets(line, sizeof line, output.get()) != nullptr) {
      const std::string words = line;
      if (words.starts_with("objective = ")) answer.objective = std::stol(words.substr(12));
      if (words.starts_with("==========") || words.starts_with("=====UNSATISFIABLE")) answer.complete = true;
    }
    return answer;
  }

  void compare(const Problem& problem, const std::string& name) {
    if (!Search::supports(problem)) return;
    const Answer theirs = ask(problem);
    ASSERT_TRUE(theirs.complete) << name << ": Gecode gave no answer\n" << flatzinc_of(problem);
    Search search(problem);
    std::optional<Score> best;
    SearchResult last;
    for (int call = 0; call < 100 && !last.exhausted; ++call) {
      last = search.improve(best, nullptr, {5000, 0, nullptr});
      if (last.schedule) best = score(problem, *last.schedule);
    }
    EXPECT_TRUE(last.exhausted) << name;
    ASSERT_EQ(best.has_value(), theirs.objective.has_value()) << name << (best ? ": Gecode finds none" : ": Gecode finds a schedule");
    EXPECT_EQ(last.infeasible, !best) << name;
    ++(best ? feasible_ : infeasible_);
    if (best) {
      EXPECT_EQ(std::lround(2 * best->lateness) * ready_range + best->ready, *theirs.objective) << name;
    }
  }

  int feasible_ = 0, infeasible_ = 0;

 private:
  fs::path folder_;
};

TEST_F(Gecode, EveryFeature) {
  for (unsigned seed = 0; seed < 200; ++seed) {
    compare(random_problem(features(seed * 37 % 1024), 40'000 + seed, {6, 16}), "seed " + std::to_string(seed));
  }
  EXPECT_GT(feasible_, 50);
  EXPECT_GT(infeasible_, 50);
}

TEST_F(Gecode, AnyProblems) {
  std::mt19937_64 random(1);
  const Draw draw = [&random](int most) { return static_cast<int>(random() % static_cast<std::uint64_t>(most + 1)); };
  for (int i = 0; i < 250; ++i) compare(any_problem(draw, Reach::plain), "problem " + std::to_string(i));
  EXPECT_GT(feasible_, 30);
  EXPECT_GT(infeasible_, 50);
}

}  // namespace
}  // namespace coatday::solver::test
