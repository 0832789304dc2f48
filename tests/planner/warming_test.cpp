// What lags behind the air, and what is carried in: every plan is judged by the checker, then looked at for what the case is about.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "checker/check.h"
#include "climate/shop_air.h"
#include "job/air_forecast.h"
#include "planner/make/make_plan.h"
#include "tests/support/jobs.h"

namespace coatday::planner {
namespace {

using tests::JobKnobs;
using tests::make_job;
using tests::monday;

/// Heated from seven in the morning to six in the evening, UTC; at once cold and at once warm, which no room is.
class HeatedByDay final : public climate::AirSource {
 public:
  explicit HeatedByDay(Celsius night) : night_(night) {}
  [[nodiscard]] climate::Air at(Instant t) const override {
    const auto hour = (t - std::chrono::floor<date::days>(t)) / std::chrono::hours(1);
    return {hour >= 7 && hour < 18 ? Celsius(20) : night_, RelativeHumidity(0.4)};
  }
  [[nodiscard]] std::string describe(Units) const override { return "heated by day"; }

 private:
  Celsius night_;
};

job::Job heated_by_day(double night) {
  job::Job job = make_job();
  job.air = [night](Instant, Instant) { return std::make_unique<HeatedByDay>(Celsius(night)); };
  for (auto& [id, product] : job.catalogue.products) product.limits.hold = Hours(0);
  return job;
}

job::Plan planned(const job::Job& job) {
  job::Plan plan = make_plan(job, {monday()});
  EXPECT_EQ(plan.status, job::Status::planned);
  for (const checker::Breach& breach : checker::check(plan, job)) ADD_FAILURE() << breach.code << ": " << breach.message;
  return plan;
}

const job::Event& find(const job::Plan& plan, const std::string& id) {
  const auto found = std::find_if(plan.events.begin(), plan.events.end(), [&](const job::Event& e) { return e.id == id; });
  if (found == plan.events.end()) throw std::logic_error("no event " + id);
  return *found;
}

bool has(const job::Plan& plan, const std::string& id) {
  return std::any_of(plan.events.begin(), plan.events.end(), [&](const job::Event& e) { return e.id == id; });
}

void keep_at(job::Job& job, const std::string& part_id, Celsius kept_at) {
  for (job::OrderPiece& piece : job.order.pieces) {
    for (piece::Part& part : piece.piece.parts) {
      if (part.id == part_id) part.kept_at = kept_at;
    }
  }
}

/// At 7:00 the room is warm; 140 mm of wood (3.1 h) is not at 8:00: 20 - 16 exp(-1/3.1) = 8.4 °C.
TEST(Warming, ThickWoodWaitsInTheMorningAfterAColdNight) {
  job::Job job = heated_by_day(4);
  job.catalogue.schedules.at("two-coats").steps.erase(job.catalogue.schedules.at("two-coats").steps.begin());  // no sanding before
  for (auto& [id, product] : job.catalogue.products) product.cans = {{Litres(0.001), {}}};                     // no can lags so long
  const job::Plan thin = make_plan(job, {monday()}, Purpose::compare);                                         // as early as may be
  for (piece::Part& part : job.order.pieces[0].piece.parts) part.shape = piece::Board{Metres(1.2), Metres(0.6), Metres(0.14)};
  const job::Plan thick = planned(job), early = make_plan(job, {monday()}, Purpose::compare);
  const auto first_coat = [](const job::Plan& plan) {
    return std::find_if(plan.events.begin(), plan.events.end(), [](const job::Event& e) { return !e.product.empty(); });
  };
  EXPECT_EQ(first_coat(thin)->start, monday());
  // The first half hour whose mean is 10 °C: from 8:30 on, 20 - 16 x 6.2 (exp(-1.5/3.1) - exp(-2/3.1)) = 10.9 °C.
  EXPECT_EQ(first_coat(early)->start, monday() + Minutes(30));
  EXPECT_NE(first_coat(thick)->why.find("the wood is at 9"), std::string::npos) << first_coat(thick)->why;
}

TEST(Warming, AColdCanWaitsToo) {
  job::Job job = heated_by_day(4);
  job.catalogue.schedules.at("two-coats").steps.erase(job.catalogue.schedules.at("two-coats").steps.begin());
  for (auto& [id, product] : job.catalogue.products) product.cans = {{Litres(10), {}}};  // 5.9 h
  const job::Plan plan = make_plan(job, {monday()}, Purpose::compare);                   // as early as may be
  EXPECT_TRUE(checker::check(plan, job).empty());
  const auto coat = std::find_if(plan.events.begin(), plan.events.end(), [](const job::Event& e) { return !e.product.empty(); });
  EXPECT_EQ(coat->start, monday() + Minutes(60)) << "5.6 °C at seven; 20 - 14.4 exp(-t / 5.9) is 10 °C after 2.2 h";
}

TEST(Warming, ABoardJustCarriedInWarmsUpFirst) {
  job::Job job = make_job();
  keep_at(job, "top", Celsius(4));
  const job::Plan plan = planned(job);
  const job::Event& in = find(plan, "table-1/top/carry-in");
  const job::Event& coat = find(plan, "table-1/top/clear 1/first");
  EXPECT_EQ(in.kind, job::EventKind::prepare);
  EXPECT_EQ(in.start, monday());
  EXPECT_TRUE(has(plan, "table-1/top/sand"));
  EXPECT_FALSE(has(plan, "table-1/leg.1-4/carry-in"));
  // 25 mm of walnut count as 762 kg/m3 x 1619 J/(kg K) x 12.5 mm x 0.13 m2K/W = 33 min; from 19 K to 0.5 K:
  const Hours warming(0.55 * std::log(19 / 0.5));
  EXPECT_GE(Hours(coat.start - in.end), warming);
  const auto wait = std::find_if(coat.after.begin(), coat.after.end(), [&](const job::AfterEvent& a) { return a.event == in.id; });
  ASSERT_NE(wait, coat.after.end());
  EXPECT_NEAR(Hours(wait->earliest - in.end).count(), warming.count(), 1e-3);
  EXPECT_EQ(wait->reason, "wood 25 mm thick from 4 °C warms up for 2 h and is warm");
}

TEST(Warming, ACanKeptElsewhereIsBroughtIn) {
  job::Job job = make_job();
  job.shop.finishes_kept_at = Celsius(12);
  const job::Plan plan = planned(job);
  const job::Event& in = find(plan, "cans/clear");
  for (const job::Event& event : plan.events) {
    if (event.product.empty()) continue;
    EXPECT_GE(Hours(event.start - in.end), Hours(1.71 * std::log(11 / 0.5))) << "a quarter of a litre: 103 min";
  }
}

TEST(Warming, WhatIsBegunWasCarriedIn) {
  job::Job job = make_job();
  keep_at(job, "top", Celsius(4));
  job.order.history = {{"table-1/top/sand", monday() - std::chrono::hours(2), monday() - std::chrono::hours(1), {}}};
  EXPECT_FALSE(has(planned(job), "table-1/top/carry-in"));
}

TEST(Warming, BothFacesStayAlike) {
  job::Job job = heated_by_day(6);
  keep_at(job, "top", Celsius(-5));
  keep_at(job, "leg", Celsius(2));
  job.shop.finishes_kept_at = Celsius(5);
  const job::Plan plan = planned(job);
  for (const job::FaceEntry& face : plan.faces) EXPECT_EQ(face.coats, 2) << face.id;
}

/// The first allowed moment of the day that a forecast for these uses gives.
Instant first_allowed(const job::Job& job, const std::vector<job::Use>& uses) {
  const job::AirForecast all = job::forecast(job, job.catalogue, uses, monday(), 1);
  for (std::size_t r = 0; r < all.days.back().last; ++r) {
    if (all.finishes.front().may[r]) return all.air.rows()[r].from;
  }
  throw std::logic_error("never allowed");
}

/// As the plans above have it: warm at 7:00, 140 mm of wood not until 8:30, a can of 10 l not until 9:00.
TEST(Warming, AForecastIsJudgedAtTheCanAndAtThePartsToo) {
  job::Job job = heated_by_day(4);
  finish::Product& clear = job.catalogue.products.at("clear");
  for (piece::Part& part : job.order.pieces[0].piece.parts) part.shape = piece::Board{Metres(1.2), Metres(0.6), Metres(0.14)};
  clear.cans = {{Litres(0.001), {}}};
  EXPECT_EQ(first_allowed(job, {{"clear", {}, {}}}), monday() - Minutes(60));
  EXPECT_EQ(first_allowed(job, job::in_use(job)), monday() + Minutes(30));
  clear.cans = {{Litres(10), {}}};
  EXPECT_EQ(first_allowed(job, {{"clear", {}, {}}}), monday() + Minutes(60));
}

/// Water condenses all the while, though each half hour ends just under 100 % where the room warms.
class DrippingRoom final : public climate::AirSource {
 public:
  [[nodiscard]] climate::Air at(Instant) const override { return {Celsius(20), RelativeHumidity(0.999)}; }
  [[nodiscard]] std::optional<climate::RoomWork> work(Instant from, Instant until) const override {
    climate::RoomWork work;
    work.condensing = Hours(until - from);
    return work;
  }
  [[nodiscard]] std::string describe(Units) const override { return "dripping"; }
};

TEST(Forecast, HoursInWhichWaterCondensesCountAsSaturated) {
  job::Job job = make_job();
  job.air = [](Instant, Instant) { return std::make_unique<DrippingRoom>(); };
  EXPECT_EQ(job::forecast(job, job.catalogue, {}, monday(), 1).days.front().saturated, Hours(24));
}

TEST(Warming, WhatAFinishGoesOnIsToldByMaterial) {
  job::Job job = make_job();
  job.order.pieces[0].piece.parts.back().species.reset();
  const std::vector<job::Use> uses = job::in_use(job);
  ASSERT_EQ(uses.size(), 1U);
  EXPECT_EQ(uses[0].product, "clear");
  EXPECT_EQ(uses[0].wood.size(), 1U);
  EXPECT_EQ(uses[0].steel.size(), 1U);
}

/// Whether each coat of a board that thick, from such a can, goes on when the forecast allows it; none where there is no plan.
std::optional<bool> coated_when_allowed(int night, int millimetres, int decilitres) {
  job::Job job = heated_by_day(night);
  job.order.pieces[0].piece.parts = {job.order.pieces[0].piece.parts.front()};
  job.order.pieces[0].piece.parts[0].shape = piece::Board{Metres(1.2), Metres(0.6), Metres(0.001 * millimetres)};
  job.catalogue.products.at("clear").cans = {{Litres(0.1 * decilitres), {}}};
  const job::Plan plan = make_plan(job, {monday()});
  if (plan.status != job::Status::planned) return std::nullopt;
  const job::AirForecast all = job::forecast(job, job.catalogue, job::in_use(job), monday(), 9);
  for (const job::Event& event : plan.events) {
    if (event.product.empty() || event.end >= all.air.end()) continue;
    for (std::size_t r = all.air.index(event.start); all.air.rows()[r].from < event.end; ++r)
      if (!all.finishes.front().may[r]) return false;
  }
  return true;
}

/// A plan follows the can from another hour on than a forecast, which begins with the day.
TEST(Warming, ItDoesNotMatterFromWhenOnABodyIsFollowed) {
  EXPECT_EQ(coated_when_allowed(1, 6, 52), true);
  EXPECT_EQ(coated_when_allowed(3, 6, 55), true);
}

RC_GTEST_PROP(Warming, PlansCoatOnlyWhenTheForecastAllows, ()) {
  const auto allowed = coated_when_allowed(*rc::gen::inRange(0, 20), *rc::gen::inRange(6, 200), *rc::gen::inRange(1, 200));
  RC_PRE(allowed.has_value());
  RC_ASSERT(*allowed);
}

RC_GTEST_PROP(Warming, AColderStoreNeverMovesTheBoundForward, ()) {
  job::Job job = heated_by_day(*rc::gen::inRange(8, 20));
  const int store = *rc::gen::inRange(-15, 8);
  keep_at(job, "top", Celsius(store));
  const job::Plan warmer = make_plan(job, {monday()});
  keep_at(job, "top", Celsius(store - *rc::gen::inRange(1, 10)));
  const job::Plan colder = make_plan(job, {monday()});
  for (const checker::Breach& breach : checker::check(colder, job)) RC_FAIL(breach.code + ": " + breach.message);
  RC_PRE(warmer.ready_bound && colder.ready_bound);
  RC_ASSERT(*colder.ready_bound >= *warmer.ready_bound);
}

}  // namespace
}  // namespace coatday::planner
