// What would help: every proposal is carried out again here, and must do what it says.

#include "plan/propose.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "plan/check.h"
#include "tests/support/jobs.h"

namespace coatday::plan {
namespace {

using tests::JobKnobs;
using tests::make_job;
using tests::monday;

const Request request{monday()};

std::vector<std::string> proposals(const Job& job) { return propose(job, request, make_plan(job, request)); }

bool says(const std::vector<std::string>& all, const std::string& words) {
  return std::any_of(all.begin(), all.end(), [&](const std::string& p) { return p.find(words) != std::string::npos; });
}

void limit(Job& job, Celsius coldest, RelativeHumidity dampest) {
  for (auto& [id, product] : job.catalogue.products) {
    product.limits.coldest = coldest;
    product.limits.dampest = dampest;
  }
}

TEST(Propose, NothingForAPlanInTime) { EXPECT_TRUE(proposals(make_job()).empty()); }

TEST(Propose, WarmthWhereItIsTooCold) {
  JobKnobs knobs;
  knobs.air = {Celsius(11), RelativeHumidity(0.5)};
  Job job = make_job(knobs);
  limit(job, Celsius(15), RelativeHumidity(0.9));
  ASSERT_NE(make_plan(job, request).status, Status::feasible);
  const auto all = proposals(job);
  ASSERT_EQ(all.size(), 1U);
  EXPECT_EQ(all[0], "keep the shop at 16 °C or warmer, nights too");  // 13 °C is too cold still, 18 °C more than is needed
}

TEST(Propose, DryAirWhereItIsTooDamp) {
  JobKnobs knobs;
  knobs.air = {Celsius(20), RelativeHumidity(0.85)};
  Job job = make_job(knobs);
  limit(job, Celsius(5), RelativeHumidity(0.75));
  ASSERT_NE(make_plan(job, request).status, Status::feasible);
  EXPECT_TRUE(says(proposals(job), "keep the shop's air at 70 % RH or drier, nights too"));
}

TEST(Propose, ALaterDateWhereItIsLate) {
  Job job = make_job();
  job.order.pieces[0].promised = monday() + std::chrono::hours(1);
  const Plan plan = make_plan(job, request);
  ASSERT_EQ(plan.status, Status::feasible);
  const auto all = propose(job, request, plan);
  ASSERT_FALSE(all.empty());
  EXPECT_EQ(all.back(),
            "promise " + plan.pieces[0].name + " for " + day_and_time(job.shop.zone.to_local(*plan.pieces[0].ready_late.deliver)));
  job.order.pieces[0].promised = plan.pieces[0].ready_late.deliver;
  EXPECT_TRUE(proposals(job).empty());
}

TEST(Propose, HandsOrPlacesWhereTheyAreShort) {
  JobKnobs knobs;
  knobs.pieces = 6;
  knobs.points = 1;
  Job job = make_job(knobs);
  const Plan plan = make_plan(job, request);
  ASSERT_TRUE(plan.pieces.back().ready_late.deliver);
  knobs.points = 7;
  const Plan roomy = make_plan(make_job(knobs), request);
  for (std::size_t p = 0; p < plan.pieces.size(); ++p) job.order.pieces[p].promised = roomy.pieces[p].ready_late.deliver;
  const auto all = proposals(job);
  EXPECT_TRUE(says(all, "more 'points' to dry on")) << testing::PrintToString(all);
}

TEST(Propose, NothingForWhatOnlyTheOrderCanMend) {
  Job job = make_job();
  for (shop::DryingPlace& place : job.shop.places) place.length = Metres(0.1);
  EXPECT_TRUE(proposals(job).empty());
}

}  // namespace
}  // namespace coatday::plan
