// How much more of something is worth having.
#include "planner/advice/amounts.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace coatday::planner {
namespace {

/// Asks for the gains of a step function: from so many on so much is gained.
std::vector<int> worth(int most, const std::vector<std::pair<int, Hours>>& steps, int* tries = nullptr) {
  int asked = 0;
  const auto gain = [&](int more) -> std::optional<Hours> {
    ++asked;
    Hours gained{0};
    for (const auto& [from, hours] : steps) gained = more >= from ? hours : gained;
    return gained;
  };
  const std::vector<int> result = worth_having(most, Hours(24), gain);
  EXPECT_LE(asked, 8);
  if (tries != nullptr) *tries = asked;
  return result;
}

TEST(Amounts, TheSmallestThatGainsADay) {
  EXPECT_EQ(worth(24, {{2, Hours(360)}}), std::vector{2});
  EXPECT_EQ(worth(24, {{3, Hours(30)}}), std::vector{3});
  EXPECT_EQ(worth(1, {{1, Hours(30)}}), std::vector{1});
}

/// Two more gain 15 days, eight more 35.
TEST(Amounts, AndTheSmallestBeyondWhichNothingIsGained) {
  EXPECT_EQ(worth(24, {{2, Hours(15 * 24)}, {7, Hours(35 * 24)}}), (std::vector{2, 7}));
  EXPECT_EQ(worth(24, {{2, Hours(24)}, {7, Hours(30)}}), std::vector{2}) << "less than another day";
}

TEST(Amounts, NothingWhereNothingIsGained) {
  EXPECT_TRUE(worth(24, {}).empty());
  EXPECT_TRUE(worth(24, {{1, Hours(23)}}).empty());
  EXPECT_TRUE(worth_having(0, Hours(24), [](int) { return Hours(100); }).empty());
  EXPECT_TRUE(worth_having(9, Hours(24), [](int) { return std::nullopt; }).empty());
}

/// Always one of the right numbers, if not the smallest, for any number of tries that it would take.
TEST(Amounts, NeverMoreThanEightTries) {
  for (int first = 1; first <= 300; first += 7) {
    const std::vector<int> all = worth(300, {{first, Hours(100)}});
    EXPECT_TRUE(all.empty() || all.front() >= first);
  }
}

}  // namespace
}  // namespace coatday::planner
