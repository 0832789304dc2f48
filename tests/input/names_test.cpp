// Ids that are made from names never stand for two things.
#include "input/names.h"

#include <gtest/gtest.h>

namespace coatday::input {
namespace {

TEST(Ids, OfTheSameWordsDiffer) {
  Ids ids;
  EXPECT_EQ(ids.make("a b", "part"), "a-b");
  EXPECT_EQ(ids.make("a-b", "part"), "a-b-2");
  EXPECT_EQ(ids.make("a b 2", "part"), "a-b-2-2");
  EXPECT_EQ(ids.make("Стол", "part"), "part");
  EXPECT_EQ(ids.make("Стул", "part"), "part-2");
}

TEST(Ids, OfTheShopsOwnAreNobodyElses) {
  Ids ids{"shop", "cans"};
  EXPECT_EQ(ids.make("Shop", "piece"), "shop-2");
  EXPECT_EQ(ids.make("cans", "piece"), "cans-2");
}

TEST(Ids, AStepIsNotTheScuffBeforeAnother) {
  Ids after({}, "-scuff"), before({}, "-scuff");
  EXPECT_EQ(after.make("clear 2", "step"), "clear-2");
  EXPECT_EQ(after.make("clear 2 scuff", "step"), "clear-2-scuff-2");
  EXPECT_EQ(before.make("clear 2 scuff", "step"), "clear-2-scuff");
  EXPECT_EQ(before.make("clear 2", "step"), "clear-2-2");
}

}  // namespace
}  // namespace coatday::input
