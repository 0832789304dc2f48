// A plan and its wood: at rest before its coats, flat between them, and what it says of cups and fixings.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "checker/check.h"
#include "climate/shop_air.h"
#include "planner/wood/findings.h"
#include "planner/wood/warnings.h"
#include "tests/planner/planned.h"
#include "wood/moisture.h"

namespace coatday::planner {
namespace {

using tests::make_job;
using tests::monday;

job::AirMaker always(double celsius, double humidity) {
  const climate::Air air{Celsius(celsius), RelativeHumidity(humidity)};
  return [air](Instant, Instant) { return std::make_unique<climate::ConstantAir>(air); };
}

piece::Part& top(job::Job& job) { return job.order.pieces[0].piece.parts[0]; }

/// One table in dry air, 6.9 % of moisture, with a varnish of which the moisture exclusion is known.
job::Job dry_shop() {
  job::Job job = make_job();
  job.catalogue.products.at("clear").family = "oil-varnish";
  job.air = always(20, 0.35);
  return job;
}

void read(job::Job& job, double percent, std::optional<Instant> at = {}) {
  piece::MeterReading reading;
  reading.moisture = MoistureContent(percent / 100);
  reading.at = at;
  top(job).solid.readings.push_back(reading);
}

const job::Event* find(const job::Plan& plan, const std::string& id) {
  const auto found = std::find_if(plan.events.begin(), plan.events.end(), [&](const job::Event& e) { return e.id == id; });
  return found == plan.events.end() ? nullptr : &*found;
}

bool complains(const std::vector<checker::Breach>& breaches, const std::string& code) {
  return std::any_of(breaches.begin(), breaches.end(), [&](const checker::Breach& b) { return b.code == code; });
}

const job::Finding* finding_of(const std::vector<job::Finding>& findings, const std::string& code) {
  const auto found = std::find_if(findings.begin(), findings.end(), [&](const job::Finding& f) { return f.code == code; });
  return found == findings.end() ? nullptr : &*found;
}

TEST(WoodAtRest, DampWoodIsMeasuredAgainBeforeAnythingIsDoneToIt) {
  job::Job job = dry_shop();
  read(job, 12);
  const job::Plan plan = planned(job);
  const job::Event* measure = find(plan, "table-1/top/measure");
  ASSERT_NE(measure, nullptr);
  EXPECT_NE(measure->why.find("12.0 % moist"), std::string::npos) << measure->why;
  for (const job::Event& event : plan.events) {
    if (event.id == measure->id || !event.id.starts_with("table-1/top/")) continue;
    EXPECT_GE(event.start, measure->end) << event.id;
  }
  EXPECT_EQ(find(plan, "table-1/leg.1-4/measure"), nullptr);
  // 25 mm from 12 % towards 6.9 % in air of 20 °C, to within 2 %: a sheet's first term, Crank 1975 eq. 4.18, with D 8.2e-11 m²/s gives 8.0 days
  // with no resistance at the surface; still air makes it some hours more.
  const double days = std::chrono::duration<double>(measure->start - monday()).count() / 86'400;
  const double emc = wood::equilibrium_moisture({Celsius(20), RelativeHumidity(0.35)}).value();
  const double share = 0.02 / (0.12 - emc), d = wood::diffusion_across(Celsius(20)).middle.value();
  const double sheet = std::log(8 / (M_PI * M_PI * share)) * 0.025 * 0.025 / (M_PI * M_PI * d) / 86'400;
  EXPECT_GT(days, sheet);
  EXPECT_LT(days, 1.3 * sheet + 1);
}

TEST(WoodAtRest, NearEnoughIsReadyAtOnce) {
  job::Job job = dry_shop();
  read(job, 8);
  EXPECT_EQ(find(planned(job), "table-1/top/measure"), nullptr);
  job.order.pieces[0].moisture_band = MoistureContent(0.005);
  EXPECT_NE(find(planned(job), "table-1/top/measure"), nullptr);
}

TEST(WoodAtRest, AnOldReadingHasDriedSince) {
  job::Job job = dry_shop();
  read(job, 12, monday() - date::days(60));
  EXPECT_EQ(find(planned(job), "table-1/top/measure"), nullptr);
}

TEST(WoodAtRest, AReadingOfAnotherCenturyTakesNoLonger) {
  job::Job job = dry_shop();
  read(job, 20, Instant{});
  EXPECT_EQ(find(planned(job), "table-1/top/measure"), nullptr);
  top(job).shape = piece::Board{Metres(1.2), Metres(0.6), Metres(0.0002)};  // veneer
  top(job).solid.readings.clear();
  read(job, 20);
  top(job).solid.cup_limit = Metres(100);
  EXPECT_EQ(make_plan(job, {monday()}).status, job::Status::planned);
}

TEST(WoodAtRest, WhatIsBegunIsNotHeldUp) {
  job::Job job = dry_shop();
  read(job, 12);
  job.order.history.push_back({"table-1/top/sand", monday() - std::chrono::hours(1), monday() - std::chrono::minutes(10), {}});
  const job::Plan plan = planned(job);
  EXPECT_LT(find(plan, "table-1/top/clear 1/first")->start, monday() + date::days(1));
}

TEST(WoodAtRest, NeverAtRestIsNoPlan) {
  job::Job job = dry_shop();
  top(job).shape = piece::Board{Metres(1.2), Metres(0.6), Metres(0.4)};
  read(job, 20);
  const job::Plan plan = make_plan(job, {monday()});
  EXPECT_EQ(plan.status, job::Status::impossible);
  ASSERT_FALSE(plan.contradiction.empty());
  EXPECT_NE(plan.contradiction.front().find("at no time within a year"), std::string::npos) << plan.contradiction.front();
}

TEST(WoodAtRest, TheCheckerSeesDampWoodCoated) {
  job::Job job = dry_shop();
  const job::Plan plan = planned(job);
  read(job, 12);
  EXPECT_TRUE(complains(checker::check(plan, job), "wood-not-at-rest"));
}

TEST(BetweenCoats, ACupLimitIsAMaximumLagBesideTheUsers) {
  job::Job job = dry_shop();
  read(job, 8.5);
  top(job).solid.cup_limit = Metres(0.002);
  const job::Plan plan = planned(job);
  const job::Event* second = find(plan, "table-1/top/clear 1/second");
  ASSERT_NE(second, nullptr);
  ASSERT_EQ(second->before.size(), 1U);
  EXPECT_NE(second->before[0].reason.find("may cup more than 2 mm"), std::string::npos) << second->before[0].reason;
  const job::Event* first = find(plan, "table-1/top/clear 1/first");
  EXPECT_LT(Hours(second->before[0].latest - first->end), job.shop.both_faces_within);
  // A limit that it does not reach in the user's own time leaves that alone.
  top(job).solid.cup_limit = Metres(0.2);
  const job::Plan loose = planned(job);
  EXPECT_EQ(Hours(find(loose, "table-1/top/clear 1/second")->before[0].latest - find(loose, "table-1/top/clear 1/first")->end),
            job.shop.both_faces_within);
}

TEST(BetweenCoats, TheCheckerSeesABoardThatCupsTooMuch) {
  job::Job job = dry_shop();
  read(job, 8.5);
  const job::Plan plan = planned(job);
  top(job).solid.cup_limit = Metres(1e-5);
  EXPECT_TRUE(complains(checker::check(plan, job), "cups-between-coats"));
}

TEST(BetweenCoats, ALimitThatNoTurnCanKeepIsNoPlan) {
  job::Job job = dry_shop();
  read(job, 8.8);
  top(job).solid.cup_limit = Metres(1e-5);
  const job::Plan plan = make_plan(job, {monday()});
  EXPECT_EQ(plan.status, job::Status::impossible);
  const bool said = std::any_of(plan.contradiction.begin(), plan.contradiction.end(),
                                [](const std::string& words) { return words.find("may cup more than") != std::string::npos; });
  EXPECT_TRUE(said);
}

/// Warm and dry by day, cool and damp by night, drifting from week to week.
class Unsteady final : public climate::AirSource {
 public:
  Unsteady(double humidity, double day, double week) : humidity_(humidity), day_(day), week_(week) {}
  [[nodiscard]] climate::Air at(Instant t) const override {
    const double days = std::chrono::duration<double>(t - monday()).count() / 86'400;
    const double by_day = std::sin(2 * M_PI * days), by_week = std::sin(2 * M_PI * days / 17);
    return {Celsius(19 + 2 * by_day), RelativeHumidity(humidity_ - day_ * by_day + week_ * by_week)};
  }
  [[nodiscard]] std::string describe(Units) const override { return "unsteady"; }

 private:
  double humidity_, day_, week_;
};

/// Whatever the wood, its limit and the air: a plan that is found is one that the checker's own scheme agrees with.
RC_GTEST_PROP(WoodProperties, TheCheckerAgreesInUnsteadyAir, ()) {
  job::Job job = dry_shop();
  const double humidity = *rc::gen::inRange(30, 65) / 100.0, day = *rc::gen::inRange(0, 8) / 100.0, week = *rc::gen::inRange(0, 12) / 100.0;
  job.air = [=](Instant, Instant) { return std::make_unique<Unsteady>(humidity, day, week); };
  const Metres thickness(*rc::gen::inRange(8, 50) / 1000.0);
  top(job).shape = piece::Board{Metres(1.2), Metres(*rc::gen::inRange(10, 90) / 100.0), thickness};
  if (*rc::gen::arbitrary<bool>()) read(job, *rc::gen::inRange(40, 160) / 10.0);
  if (*rc::gen::arbitrary<bool>()) top(job).solid.cup_limit = Metres(*rc::gen::inRange(5, 100) / 10'000.0);
  const job::Plan plan = make_plan(job, {monday()});
  for (const checker::Breach& breach : checker::check(plan, job)) RC_FAIL(breach.code + ": " + breach.message);
  for (const job::Finding& finding : wood_warnings(job, plan)) RC_ASSERT(!finding.message.empty());
}

TEST(WoodWarnings, SayNothingWhereTheOrderAsksNothing) {
  const job::Job job = dry_shop();
  EXPECT_TRUE(wood_warnings(job, planned(job)).empty());
}

TEST(WoodWarnings, AFaceLeftBareOnPurposeIsAnsweredWithItsCup) {
  job::Job job = dry_shop();
  read(job, 8.5);
  top(job).exceptions.push_back({"underside", 0, "nobody sees it", {}});
  job.order.pieces[0].room = always(20, 0.5);
  const auto findings = wood_warnings(job, planned(job));
  const job::Finding* cup = finding_of(findings, "cup");
  ASSERT_NE(cup, nullptr);
  EXPECT_EQ(cup->severity, job::Severity::note);
  EXPECT_NE(cup->message.find("in the customer's room"), std::string::npos) << cup->message;
}

TEST(WoodWarnings, AFixingThatIsTooTightIsShort) {
  job::Job job = dry_shop();
  job.order.pieces[0].room = always(20, 0.65);
  piece::Fixing tight{piece::FixingKind::hole, "corner", {Metres(0.28), Metres(0.006), Metres(0.005)}, {}};
  top(job).solid.fixings = {tight};
  const job::Plan plan = planned(job);
  const auto findings = wood_warnings(job, plan);
  ASSERT_NE(finding_of(findings, "fixing-short"), nullptr);
  // Flat walnut, 0.00274 for each 1 % (table 13-5): the play that is needed 280 mm off, from what it is fixed at to the room's equilibrium.
  const job::WoodFindings wood = wood_findings(job, plan);
  const job::WoodBoard& board = *wood.parts[0].board;
  const double emc = wood::equilibrium_moisture({Celsius(20), RelativeHumidity(0.65)}).value();
  const double needed = 0.28 * 0.00274 * 100 * (emc - board.when_fixed.value());
  EXPECT_NEAR(board.fixings[0].play->needed().value(), needed, 1e-6);
  EXPECT_NEAR(board.fixings[0].play->short_by().value(), needed - 0.0005, 1e-6);
  top(job).solid.fixings[0].measures.opening = Metres(0.005 + 2 * needed + 1e-5);
  EXPECT_EQ(finding_of(wood_warnings(job, plan), "fixing-short"), nullptr);
}

TEST(WoodFindings, BothFacesAlikeStayFlatAndABareOneCupsThenSettles) {
  job::Job job = dry_shop();
  job.order.pieces[0].room = always(20, 0.55);
  const job::WoodFindings wood = wood_findings(job, planned(job));
  ASSERT_EQ(wood.parts.size(), 2U);
  ASSERT_TRUE(wood.parts[0].board);
  EXPECT_FALSE(wood.parts[1].board) << "a leg is no board";
  const auto way = [&](const std::string& name) {
    const auto& cups = wood.parts[0].board->cups;
    const auto at = std::find_if(cups.begin(), cups.end(), [&](const job::Cupping& c) { return c.way == name; });
    return at == cups.end() ? job::Cupping{} : *at;
  };
  const auto size = [](const job::Cupping& cup) { return std::abs(cup.highest.cup.value()); };
  EXPECT_GT(size(way("underside bare")), 3 * size(way("as planned")));
  EXPECT_GT(size(way("underside bare")), size(way("one coat fewer underneath")));
  EXPECT_GT(std::abs(way("underside bare").most.value()), std::abs(way("underside bare").least.value()));
  EXPECT_LE(size(way("edges bare")), size(way("as planned")));
  EXPECT_LT(std::abs(way("underside bare").settled.cup.value()), 0.1 * size(way("underside bare")));
  EXPECT_LT(way("underside bare").highest.cup, Metres(0)) << "damp room: the bare underside swells, the face is hollow";
}

TEST(WoodFindings, PlywoodIsLeftOutWithAReason) {
  job::Job job = dry_shop();
  top(job).solid.core = piece::Core::plywood;
  const job::WoodFindings wood = wood_findings(job, planned(job));
  EXPECT_NE(wood.parts[0].skipped.find("plywood"), std::string::npos);
  EXPECT_FALSE(wood.parts[0].board);
}

TEST(WoodFindings, OutsideTheCoefficientsRangeNoCupIsTold) {
  job::Job job = dry_shop();
  job.air = always(20, 0.15);  // 3.9 %
  const job::WoodFindings wood = wood_findings(job, planned(job));
  EXPECT_TRUE(wood.parts[0].board->cups.empty());
  EXPECT_NE(wood.parts[0].board->no_cup.find("drier than 6 % or damper than 14 %"), std::string::npos);
}

}  // namespace
}  // namespace coatday::planner
