// Why open days pass without a coat.
#include "planner/result/waits.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/planner/planned.h"

namespace coatday::planner {
namespace {

/// Cold until Thursday, then warm.
class ColdStart final : public climate::AirSource {
 public:
  [[nodiscard]] climate::Air at(Instant t) const override {
    return {Celsius(t < tests::monday() + date::days(3) - std::chrono::hours(8) ? 8 : 23), RelativeHumidity(0.45)};
  }
  [[nodiscard]] std::string describe(Units) const override { return "a cold start"; }
};

job::Job cold_start() {
  job::Job job = tests::make_job();
  job.air = [](Instant, Instant) { return std::make_unique<ColdStart>(); };
  for (auto& [id, product] : job.catalogue.products) product.limits.coldest = Celsius(10);
  return job;
}

LocalDay day(const job::Plan& plan, Instant t) { return day_of(plan.shop.zone.to_local(t)); }

bool coated_on(const job::Plan& plan, LocalDay wanted) {
  return std::any_of(plan.events.begin(), plan.events.end(),
                     [&](const job::Event& e) { return job::is_coat(e.kind) && day(plan, e.start) == wanted; });
}

TEST(Waits, ForWarmthNameTheAirOfTheFirstDay) {
  const job::Plan plan = planned(cold_start());
  ASSERT_FALSE(plan.waits.empty());
  const job::Wait& wait = plan.waits.front();
  EXPECT_EQ(wait.day, day(plan, tests::monday()));
  EXPECT_TRUE(job::is_coat(plan.events[wait.step].kind));
  EXPECT_EQ(wait.reason, plan.events[wait.step].why);
  EXPECT_FALSE(wait.air_fits);
  EXPECT_NE(wait.air.find("8 °C"), std::string::npos) << wait.air;
}

TEST(Waits, CoverEveryOpenDayWithoutACoatUntilTheLastOne) {
  job::Job job = tests::make_job();
  auto& hours = job.catalogue.products.at("clear").rows.front().hours;
  hours[finish::Stage::sand] = hours[finish::Stage::recoat] = Hours(40);  // two nights and more
  hours[finish::Stage::recoat_close] = Hours(200);
  const job::Plan plan = planned(job);
  ASSERT_FALSE(plan.waits.empty());
  std::optional<Instant> last;
  for (const job::Event& event : plan.events) {
    if (job::is_coat(event.kind)) last = event.start;
  }
  for (const shop::WorkingTime& shift : plan.working) {
    const LocalDay open = day(plan, shift.begin);
    if (shift.begin >= *last || coated_on(plan, open)) continue;
    EXPECT_TRUE(std::any_of(plan.waits.begin(), plan.waits.end(), [&](const job::Wait& wait) {
      return wait.day <= open && open < day(plan, plan.events[wait.step].start);
    })) << short_date(open);
  }
  for (const job::Wait& wait : plan.waits) {
    EXPECT_FALSE(coated_on(plan, wait.day));
    EXPECT_TRUE(wait.air_fits) << "this air never changes, and the coats go on in it";
    EXPECT_TRUE(wait.air.empty());
  }
}

TEST(Waits, AreNotInPlansThatAreOnlyCompared) { EXPECT_TRUE(make_plan(cold_start(), {tests::monday()}, Purpose::compare).waits.empty()); }

}  // namespace
}  // namespace coatday::planner
