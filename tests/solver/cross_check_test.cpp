// Problems without rhyme or reason, every way of solving them against the others. The fuzz target draws the same problems from its bytes.

#include "tests/solver/cross_check.h"

#include <gtest/gtest.h>

#include <random>

#include "tests/solver/any_problem.h"

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

}  // namespace
}  // namespace coatday::solver::test
