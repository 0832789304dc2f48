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

// Batches of 80 doors are called door-1, door-9 and so on.
TEST(Ids, ADoorOneBesideManyDoorsIsAnotherOne) {
  Ids ids;
  EXPECT_EQ(ids.make("door", "part", 80), "door");
  EXPECT_EQ(ids.make("door 1", "part"), "door-1-2");
  EXPECT_EQ(ids.make("door 81", "part"), "door-81") << "there is no such batch";
  EXPECT_EQ(ids.make("door 01", "part"), "door-01") << "nor such a number";
}

TEST(Ids, ManyDoorsBesideADoorOneAreOthers) {
  Ids ids;
  EXPECT_EQ(ids.make("door 1", "part"), "door-1");
  EXPECT_EQ(ids.make("door", "part", 80), "door-2");
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
