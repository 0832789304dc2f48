// Solvent vapour: what a coat takes, coats together within the exhaust, and what is refused.

#include "job/fresh_air.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "checker/check.h"
#include "tests/checker/small_plan.h"
#include "tests/planner/planned.h"

namespace coatday::planner {
namespace {

using tests::JobKnobs;
using tests::make_job;
using tests::monday;

/// Two people, two tables, and a clear that is mostly toluene.
job::Job job_with(std::optional<CubicMetresPerHour> airflow) {
  JobKnobs knobs;
  knobs.people = 2;
  knobs.pieces = 2;
  job::Job job = make_job(knobs);
  finish::Product& clear = job.catalogue.products.at("clear");
  clear.base = finish::Base::lacquer_thinner;
  clear.solvent = *finish::solvent("toluene");
  clear.voc = GramsPerLitre(600);
  job.shop.ventilation.airflow = airflow;
  return job;
}

CubicMetresPerHour most_of_one(const job::Plan& plan) {
  CubicMetresPerHour most;
  for (const job::Event& event : plan.events) most = event.vapour ? std::max(most, event.vapour->airflow) : most;
  return most;
}

Minutes pauses(const job::Plan& plan) {
  Minutes sum{0};
  for (const job::Event& event : plan.events) sum += event.vapour ? event.vapour->pauses : Minutes(0);
  return sum;
}

TEST(Vapour, OfACoatIsToldWithoutAnAirflow) {
  const job::Plan plan = planned(job_with({}));
  ASSERT_EQ(plan.status, job::Status::planned);
  for (const job::Event& event : plan.events) {
    ASSERT_EQ(event.vapour.has_value(), !event.product.empty()) << event.id;
    if (!event.vapour) continue;
    // 600 g of toluene a litre, 867 g/l; 8564 ft3 of air a gallon (29 CFR 1910.94(c)(6)(ii), worked example) are 64.06 m3 a litre.
    const double litres = event.volume->value() * 600 / 867;
    EXPECT_NEAR(event.vapour->solvent.value(), litres, 1e-9);
    EXPECT_NEAR(event.vapour->air.value(), litres * 8564 * 0.0283168466 / 3.785411784, 2e-5 * event.vapour->air.value());
    const double hours = Hours(Hours(event.end - event.start) - event.set_up - event.clean_up).count();
    EXPECT_NEAR(event.vapour->airflow.value(), event.vapour->air.value() / hours, 1e-9);
  }
  EXPECT_EQ(pauses(plan), Minutes(0));
  ASSERT_TRUE(job::most_vapour(plan));
  EXPECT_GT(job::most_vapour(plan)->airflow, most_of_one(plan));  // two at once
}

TEST(Vapour, KeepsCoatsApartThatAreTogetherTooMuch) {
  const CubicMetresPerHour enough_for_one = most_of_one(planned(job_with({}))) * 1.05;
  const job::Plan plan = planned(job_with(enough_for_one));
  ASSERT_EQ(plan.status, job::Status::planned);
  EXPECT_LE(job::most_vapour(plan)->airflow, enough_for_one);
  EXPECT_EQ(pauses(plan), Minutes(0));
}

TEST(Vapour, SpreadsACoatThatIsTooMuchByItself) {
  const CubicMetresPerHour too_little = most_of_one(planned(job_with({}))) * 0.8;
  const job::Plan plan = planned(job_with(too_little));
  ASSERT_EQ(plan.status, job::Status::planned);
  EXPECT_LE(job::most_vapour(plan)->airflow, too_little);
  EXPECT_GT(pauses(plan), Minutes(0));
}

TEST(Vapour, IsRefusedWhereOneItemIsFarTooMuch) {
  for (const double airflow : {5.0, 1e-7, 1e-30}) {  // next to nothing makes spans that no clock counts
    for (const auto pot_life : {std::optional<Hours>(), std::optional(Hours(2))}) {
      job::Job job = job_with(CubicMetresPerHour(airflow));
      job.catalogue.products.at("clear").pot_life = pot_life;
      const job::Plan plan = make_plan(job, {monday()});
      EXPECT_EQ(plan.status, job::Status::impossible) << airflow;
      const auto too_much = [](const job::Finding& f) { return f.code == "too-much-vapour" && f.severity == job::Severity::error; };
      EXPECT_TRUE(std::any_of(plan.findings.begin(), plan.findings.end(), too_much)) << airflow;
    }
  }
}

TEST(Vapour, AtTwentyPercentTakesAQuarterMoreAir) {
  job::Job job = job_with({});
  const job::Plan federal = planned(job);
  job.shop.ventilation.limit = finish::california_limit;
  const job::Plan california = planned(job);
  for (std::size_t i = 0; i < federal.events.size(); ++i) {
    if (!federal.events[i].vapour) continue;
    EXPECT_NEAR(california.events[i].vapour->air / federal.events[i].vapour->air, 1.25, 1e-9);
  }
}

TEST(Vapour, OfWhatIsDoneIsNoReasonAgainstThePlan) {
  job::Job job = job_with({});
  const job::Plan before = planned(job);
  const CubicMetresPerHour little = most_of_one(before) * 0.8;
  for (const job::Event& event : before.events) {
    if (event.end <= job::most_vapour(before)->at + std::chrono::hours(1))
      job.order.history.push_back({event.id, event.start, event.end, {}});
  }
  job.shop.ventilation.airflow = little;
  EXPECT_EQ(planned(job, {job.order.history.back().end}).status, job::Status::planned);
}

std::vector<std::string> codes(const checker::test::Small& small) {
  std::vector<std::string> all;
  for (const checker::Breach& breach : checker::check(small.plan, small.job)) {
    if (all.empty() || all.back() != breach.code) all.push_back(breach.code);
  }
  return all;
}

/// The small plan with solvent in its finish, and its events ask for more than enough air.
checker::test::Small with_solvent() {
  checker::test::Small small = checker::test::small_plan();
  small.product().voc = GramsPerLitre(500);
  for (job::Event& event : small.plan.events) {
    if (!event.product.empty()) event.vapour = job::Vapour{Litres(1), Grams(900), CubicMetres(1e6), CubicMetresPerHour(1e6), {}};
  }
  return small;
}

TEST(CheckVapour, IsContentWithMoreAirThanItTakes) {
  checker::test::Small small = with_solvent();
  small.job.shop.ventilation.airflow = CubicMetresPerHour(1e5);
  EXPECT_EQ(codes(small), std::vector<std::string>());
}

TEST(CheckVapour, TellsWhatIsLeftOutOrTooLow) {
  checker::test::Small small = with_solvent();
  small.event("table/leg.1-2/clear-1").vapour.reset();
  EXPECT_EQ(codes(small), std::vector<std::string>{"vapour-understated"});
  small = with_solvent();
  small.event("table/leg.1-2/clear-1").vapour->airflow = CubicMetresPerHour(1);
  EXPECT_EQ(codes(small), std::vector<std::string>{"vapour-understated"});
}

TEST(CheckVapour, TellsTooLittleAir) {
  checker::test::Small small = with_solvent();
  small.job.shop.ventilation.airflow = CubicMetresPerHour(10);
  EXPECT_EQ(codes(small), std::vector<std::string>{"too-little-air"});
}

/// A coat of so much, wet from an hour until another.
job::Event coat(double airflow, int from, int until) {
  job::Event event;
  event.product = "clear";
  event.start = monday() + std::chrono::hours(from);
  event.end = event.start + Minutes(30);
  event.stages.expected[finish::Stage::tack_free] = monday() + std::chrono::hours(until);
  event.vapour = job::Vapour{Litres(1), Grams(800), CubicMetres(60), CubicMetresPerHour(airflow), {}};
  return event;
}

RC_GTEST_PROP(MostVapour, IsNeverLessWithOneCoatMore, ()) {
  job::Plan plan;
  finish::Product clear;
  clear.rows.resize(1);
  clear.rows.front().hours[finish::Stage::tack_free] = Hours(1);
  plan.products["clear"] = clear;
  CubicMetresPerHour before;
  for (int n = *rc::gen::inRange(1, 12); n > 0; --n) {
    const int from = *rc::gen::inRange(0, 20);
    const job::Event next = coat(*rc::gen::inRange(1, 500), from, from + *rc::gen::inRange(1, 10));
    plan.events.push_back(next);
    const auto most = job::most_vapour(plan);
    RC_ASSERT(most.has_value());
    RC_ASSERT(most->airflow >= before);
    RC_ASSERT(most->airflow >= next.vapour->airflow);
    before = most->airflow;
  }
}

}  // namespace
}  // namespace coatday::planner
