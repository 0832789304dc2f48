// Laws that hold for every shop and order.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "checker/check.h"
#include "planner/make/make_plan.h"
#include "tests/support/jobs.h"

namespace coatday::planner {
namespace {

using tests::JobKnobs;
using tests::make_job;
using tests::monday;

JobKnobs any_knobs() {
  JobKnobs knobs;
  knobs.air = {Celsius(*rc::gen::inRange(12, 29)), RelativeHumidity(*rc::gen::inRange(25, 75) / 100.0)};
  knobs.people = *rc::gen::inRange(1, 4);
  knobs.points = *rc::gen::inRange(1, 5);
  knobs.racks = *rc::gen::inRange(1, 6);
  knobs.pieces = *rc::gen::inRange(1, 4);
  knobs.doors = *rc::gen::inRange(0, 9);
  knobs.scuff_step = *rc::gen::arbitrary<bool>();
  const LocalDay first{date::local_days(date::year(2027) / 1 / 11)};
  for (const int day : *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 21))) knobs.closed.push_back(first + date::days(day));
  if (knobs.closed.size() > 4) knobs.closed.resize(4);
  return knobs;
}

job::Plan plan_of(const JobKnobs& knobs) { return make_plan(make_job(knobs), {monday()}); }

RC_GTEST_PROP(PlanLaws, EveryPlanPassesTheChecker, ()) {
  const job::Job job = make_job(any_knobs());
  const job::Plan plan = make_plan(job, {monday()});
  RC_ASSERT(plan.status == job::Status::planned);
  for (const checker::Breach& breach : checker::check(plan, job)) RC_FAIL(breach.code + ": " + breach.message);
}

RC_GTEST_PROP(PlanLaws, AColderShopNeverMovesTheBoundForward, ()) {
  JobKnobs knobs = any_knobs();
  const job::Plan warm = plan_of(knobs);
  knobs.air.temperature = knobs.air.temperature - Kelvins(1);
  const job::Plan cold = plan_of(knobs);
  RC_PRE(warm.ready_bound && cold.ready_bound);
  RC_ASSERT(*cold.ready_bound >= *warm.ready_bound);
}

RC_GTEST_PROP(PlanLaws, AHolidayNeverMovesTheBoundForward, ()) {
  JobKnobs knobs = any_knobs();
  const job::Plan before = plan_of(knobs);
  knobs.closed.push_back(LocalDay{date::local_days(date::year(2027) / 1 / 11)} + date::days(*rc::gen::inRange(0, 14)));
  const job::Plan after = plan_of(knobs);
  RC_PRE(before.ready_bound && after.ready_bound);
  RC_ASSERT(*after.ready_bound >= *before.ready_bound);
}

RC_GTEST_PROP(PlanLaws, ASmallerRackNeverMovesTheBoundForward, ()) {
  JobKnobs knobs = any_knobs();
  knobs.racks = std::max(2, knobs.racks);
  const job::Plan before = plan_of(knobs);
  --knobs.racks;
  const job::Plan after = plan_of(knobs);
  RC_PRE(before.ready_bound && after.ready_bound);
  RC_ASSERT(*after.ready_bound >= *before.ready_bound);
}

SquareMetres sum_of_areas(const std::vector<job::FaceEntry>& faces) {
  SquareMetres sum;
  for (const job::FaceEntry& face : faces) sum += face.area;
  return sum;
}

RC_GTEST_PROP(PlanLaws, TheOrderOfPiecesChangesNoTotal, ()) {
  JobKnobs knobs = any_knobs();
  knobs.pieces = 3;
  job::Job job = make_job(knobs);
  const job::Plan one = make_plan(job, {monday()}, Purpose::compare);
  std::reverse(job.order.pieces.begin(), job.order.pieces.end());
  const job::Plan other = make_plan(job, {monday()}, Purpose::compare);
  RC_ASSERT(std::abs(sum_of_areas(one.faces).value() - sum_of_areas(other.faces).value()) < 1e-9);
  RC_ASSERT(one.events.size() > 0U);
  double need = 0, need_other = 0;
  for (const job::Event& event : one.events) need += event.volume.value_or(Litres(0)).value();
  for (const job::Event& event : other.events) need_other += event.volume.value_or(Litres(0)).value();
  RC_ASSERT(std::abs(need - need_other) < 1e-9);
}

RC_GTEST_PROP(PlanLaws, TheSameJobGivesTheSamePlan, ()) {
  const JobKnobs knobs = any_knobs();
  const job::Plan one = plan_of(knobs), other = plan_of(knobs);
  RC_ASSERT(one.events.size() == other.events.size());
  for (std::size_t i = 0; i < one.events.size(); ++i) {
    RC_ASSERT(one.events[i].id == other.events[i].id);
    RC_ASSERT(one.events[i].start == other.events[i].start);
  }
}

}  // namespace
}  // namespace coatday::planner
