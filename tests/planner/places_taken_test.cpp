// What is done holds a place as far as there is room.
#include <gtest/gtest.h>

#include "planner/model/places_taken.h"
#include "tests/support/jobs.h"

namespace coatday::planner {
namespace {

TEST(PlacesTaken, WhatFindsNoRoomWasLaidElsewhere) {
  tests::JobKnobs knobs;
  knobs.doors = 10;
  knobs.racks = 4;
  const job::Job job = tests::make_job(knobs);
  const Loads loads = make_loads(job, Batching::fit);
  std::vector<const Load*> doors;
  for (const Load& load : loads.loads) {
    if (load.holds.front().part == "door") doors.push_back(&load);
  }
  ASSERT_EQ(doors.size(), 3U);
  PlacesTaken taken(loads, job.shop.gap);
  EXPECT_TRUE(taken.take(*doors[0]));
  EXPECT_FALSE(taken.take(*doors[1])) << "four doors on four racks leave none";
  EXPECT_FALSE(PlacesTaken({}, job.shop.gap).take(Load{})) << "a load that fits nowhere";
}

}  // namespace
}  // namespace coatday::planner
