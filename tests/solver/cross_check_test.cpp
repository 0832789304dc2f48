// Problems without rhyme or reason, every way of solving them against the others. The fuzz target draws the same problems from its bytes.

#include "tests/solver/cross_check.h"

#include <gtest/gtest.h>

#include <fstream>
#include <random>
#include <string>

#include "tests/solver/any_problem.h"
#include "tests/support/source_dir.h"

namespace coatday::solver::test {
namespace {

void check(std::uint64_t seed, Reach reach = Reach::plain) {
  std::mt19937_64 random(seed);
  const Draw draw = [&random](int most) { return static_cast<int>(random() % static_cast<std::uint64_t>(most + 1)); };
  EXPECT_EQ(cross_check(any_problem(draw, reach)), std::vector<std::string>{}) << "seed " << seed;
}

TEST(CrossCheck, AnyProblems) {
  for (std::uint64_t seed = 0; seed < 1500; ++seed) check(seed);
}

TEST(CrossCheck, AnyProblemsWithAlternativesAndStretches) {
  for (std::uint64_t seed = 0; seed < 1500; ++seed) check(seed, Reach::all);
}

// The exact search found a schedule of score nought where no pass had found any.
TEST(CrossCheck, AFirstScheduleThatIsReadyAtOnce) { check(9363); }

// Propagation after going back missed what a use of a resource, as it was last read, did not seem to meet.
TEST(CrossCheck, ReadsUsesAnewAfterGoingBack) {
  check(45949);
  check(61175);
}

/// A line of tests/fuzz/solve_corpus.txt, two digits a byte.
std::vector<int> bytes_of(const std::string& line) {
  std::vector<int> bytes;
  for (std::size_t i = 0; i + 1 < line.size(); i += 2) bytes.push_back(std::stoi(line.substr(i, 2), nullptr, 16));
  return bytes;
}

// Inputs that together reach every branch that libFuzzer has found in half an hour.
TEST(CrossCheck, CorpusOfTheFuzzer) {
  std::ifstream file(source_dir() + "/tests/fuzz/solve_corpus.txt");
  int read = 0;
  for (std::string line; std::getline(file, line); ++read) {
    const std::vector<int> bytes = bytes_of(line);
    std::size_t next = 0;
    const Draw draw = [&](int most) { return next < bytes.size() ? bytes[next++] % (most + 1) : 0; };
    EXPECT_EQ(cross_check(any_problem(draw, Reach::all)), std::vector<std::string>{}) << line;
  }
  EXPECT_GT(read, 500);
}

}  // namespace
}  // namespace coatday::solver::test
