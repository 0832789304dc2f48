// The first film takes what bare wood takes, whatever without a film lies under it.
#include <gtest/gtest.h>

#include <numeric>

#include "finish/coverage.h"
#include "tests/planner/planned.h"

namespace coatday::planner {
namespace {

/// A painting contractor's guide (seen): a gallon covers 350 square feet of a smooth painted surface, and 250 of uncoated wood.
constexpr double square_feet_on_film = 350, square_feet_on_bare_wood = 250;
constexpr double square_metres_of_square_foot = 0.09290304, litres_of_gallon = 3.785411784;

double litres(double square_metres, double square_feet_a_gallon) {
  return square_metres / square_metres_of_square_foot / square_feet_a_gallon * litres_of_gallon;
}

/// The first step stains, the others film.
job::Job stained(bool stain) {
  tests::JobKnobs knobs;
  knobs.scuff_step = false;
  job::Job job = tests::make_job(knobs);
  finish::Product& clear = job.catalogue.products.at("clear");
  clear.stated_spreading_rate = SquareMetresPerLitre(square_feet_on_film * square_metres_of_square_foot / litres_of_gallon);
  clear.first_coat_factor = square_feet_on_film / square_feet_on_bare_wood;
  clear.end_grain_factor = 1;
  clear.film = true;
  if (!stain) return job;
  finish::Product dye = clear;
  dye.id = dye.name = "dye";
  dye.film = false;
  job.catalogue.products.emplace("dye", dye);
  finish::Schedule& schedule = job.catalogue.schedules.at("two-coats");
  finish::Step step = schedule.steps[1];
  step.id = step.name = "dye";
  step.product = "dye";
  schedule.steps.insert(schedule.steps.begin() + 1, step);
  return job;
}

/// What a coat takes, with what stays in a brush taken off, against what the rates give over the faces that it covers.
void expect_rate(const job::Plan& plan, const std::string& step, double square_feet) {
  int coats = 0;
  for (const job::Event& event : plan.events) {
    if (event.step_id.step != step || !job::is_coat(event.kind)) continue;
    ++coats;
    const double area = std::accumulate(event.faces.begin(), event.faces.end(), 0.0,
                                        [&](double sum, std::size_t f) { return sum + plan.faces[f].area.value(); });
    const double efficiency = finish::transfer(*event.method).efficiency;
    EXPECT_NEAR(event.volume->value(), litres(area, square_feet) / efficiency, 1e-9) << event.id;
  }
  EXPECT_GT(coats, 0) << step;
}

TEST(BareWood, TheFirstFilmTakesMore) {
  const job::Plan plan = planned(stained(false));
  ASSERT_EQ(plan.status, job::Status::planned);
  expect_rate(plan, "clear 1", square_feet_on_bare_wood);
  expect_rate(plan, "clear 2", square_feet_on_film);
}

TEST(BareWood, AStainWithoutAFilmLeavesItAsThirsty) {
  const job::Plan plan = planned(stained(true));
  ASSERT_EQ(plan.status, job::Status::planned);
  expect_rate(plan, "dye", square_feet_on_bare_wood);
  expect_rate(plan, "clear 1", square_feet_on_bare_wood);
  expect_rate(plan, "clear 2", square_feet_on_film);
}

}  // namespace
}  // namespace coatday::planner
