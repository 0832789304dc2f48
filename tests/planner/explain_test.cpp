// Why a step starts when it does: what is named as in the way is so. Without it the step starts sooner.
#include "planner/result/explain.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

#include "tests/planner/planned.h"

namespace coatday::planner {
namespace {

using tests::JobKnobs;
using tests::make_job;
using tests::monday;

const job::Event* that_says(const job::Plan& plan, const std::string& words) {
  const auto event =
      std::find_if(plan.events.begin(), plan.events.end(), [&](const job::Event& e) { return e.why.find(words) != std::string::npos; });
  return event == plan.events.end() ? nullptr : &*event;
}

Instant start_of(const job::Plan& plan, const std::string& id) {
  const auto event = std::find_if(plan.events.begin(), plan.events.end(), [&](const job::Event& e) { return e.id == id; });
  return event == plan.events.end() ? Instant::max() : event->start;
}

std::string reasons(const job::Plan& plan) {
  std::string all;
  for (const job::Event& event : plan.events) all += event.id + ": " + event.why + "\n";
  return all;
}

/// The first step that says so starts sooner with the second job.
void sooner_without(const job::Job& job, const std::string& words, const job::Job& without) {
  const job::Plan plan = planned(job);
  const job::Event* held = that_says(plan, words);
  ASSERT_NE(held, nullptr) << words << "\n" << reasons(plan);
  EXPECT_LT(start_of(planned(without), held->id), held->start) << held->id << ": " << held->why;
}

TEST(Explain, NamesWhoDriesOnThePlace) {
  JobKnobs knobs;
  knobs.pieces = 3;
  knobs.points = 1;
  const job::Job tight = make_job(knobs);
  knobs.points = 3;
  sooner_without(tight, "no points free: table ", make_job(knobs));
}

TEST(Explain, NamesTheWorkOfWhoIsBusy) {
  JobKnobs knobs;
  knobs.pieces = 2;
  const job::Job alone = make_job(knobs);
  knobs.people = 2;
  sooner_without(alone, "nobody is free: sand (table ", make_job(knobs));
}

/// Work is gathered into visits, so that not every order has to wait: among some, one does, and without the reason it does not.
bool some_sooner_without(const std::string& words, const std::function<std::pair<job::Job, job::Job>(int)>& jobs) {
  for (int n = 0; n < 16; ++n) {
    const auto [job, without] = jobs(n);
    const job::Plan plan = planned(job);
    const job::Event* held = that_says(plan, words);
    if (held != nullptr && start_of(planned(without), held->id) < held->start) return true;
  }
  return false;
}

TEST(Explain, NamesTheDust) {
  EXPECT_TRUE(some_sooner_without("the dust of sand (", [](int n) {
    JobKnobs knobs;
    knobs.pieces = 1 + n % 4;
    job::Job job = make_job(knobs);
    job.shop.light_dust_settles = Hours(0.5 + 0.5 * (n / 4));
    job::Job clean = job;
    for (finish::Step& step : clean.catalogue.schedules.at("two-coats").steps) step.dusty = false;
    return std::pair(job, clean);
  }));
}

/// The turn of what lies flat waits until it is dry to handle, 2 h; the second side has to follow within some hours.
TEST(Explain, NamesTheLimitOfTheSecondSide) {
  EXPECT_TRUE(some_sooner_without("its second side would have to follow by ", [](int n) {
    JobKnobs knobs;
    knobs.doors = 2 + n % 4;
    knobs.both_faces_within = Hours(2.5 + 0.5 * (n / 4));
    const job::Job job = make_job(knobs);
    knobs.both_faces_within = Hours(24);
    return std::pair(job, make_job(knobs));
  }));
}

TEST(Explain, NothingIsLeftToGuess) {
  for (const int points : {1, 2, 4}) {
    JobKnobs knobs;
    knobs.pieces = 4;
    knobs.points = points;
    knobs.doors = 6;
    knobs.racks = points;
    const job::Plan plan = planned(make_job(knobs));
    for (const job::Event& event : plan.events) EXPECT_FALSE(event.why.empty()) << event.id;
  }
}

/// From the plan's start to the last delivery, all time has a cause.
TEST(Explain, TheCausesAddUpToTheWholeTime) {
  for (const int points : {1, 4}) {
    JobKnobs knobs;
    knobs.pieces = 3;
    knobs.points = points;
    const job::Plan plan = planned(make_job(knobs));
    ASSERT_EQ(plan.time_spent.size(), 1U);
    EXPECT_NEAR(plan.time_spent[0].all.count(), Hours(*plan.ready - plan.from).count(), 1e-6);
    Hours waits{0};
    for (const job::TimeShare& share : plan.time_spent[0].shares) waits += share.cause == job::TimeCause::place ? share.time : Hours(0);
    EXPECT_EQ(waits > Hours(0), points == 1);
  }
}

}  // namespace
}  // namespace coatday::planner
