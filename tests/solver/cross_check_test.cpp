// Problems without rhyme or reason, every way of solving them against the others. The fuzz target draws the same problems from its bytes.

#include "tests/solver/cross_check.h"

#include <gtest/gtest.h>

#include <random>

#include "tests/solver/any_problem.h"

namespace coatday::solver::test {
namespace {

TEST(CrossCheck, AnyProblems) {
  std::mt19937_64 random(1);
  const Draw draw = [&random](int most) { return static_cast<int>(random() % static_cast<std::uint64_t>(most + 1)); };
  for (int i = 0; i < 1500; ++i) {
    EXPECT_EQ(cross_check(any_problem(draw)), std::vector<std::string>{}) << i;
  }
}

}  // namespace
}  // namespace coatday::solver::test
