#include "cli/ready.h"

#include <gtest/gtest.h>

#include <set>

namespace coatday::cli {
namespace {

Instant at(const Zone& zone, const char* local) { return zone.to_instant(parse_local_time(local).value()); }

job::Finding finding(job::Severity severity) { return {"code", severity, "message", "", {}}; }

TEST(PlanFrom, CommandLineThenOrderThenNow) {
  job::Job job;
  job.shop.zone = Zone::find("America/Chicago").value();
  Arguments arguments;
  const Instant now = at(job.shop.zone, "2027-01-11 08:01") + std::chrono::seconds(2);
  EXPECT_EQ(plan_from(arguments, job, now), at(job.shop.zone, "2027-01-11 08:05")) << "rounded up to 5 min";
  EXPECT_EQ(plan_from(arguments, job, at(job.shop.zone, "2027-01-11 08:05")), at(job.shop.zone, "2027-01-11 08:05"));
  arguments.from = parse_local_time("2027-01-20 09:00").value();
  EXPECT_EQ(plan_from(arguments, job, now), at(job.shop.zone, "2027-01-20 09:00")) << "in the shop's zone";
  job.order.start = at(job.shop.zone, "2027-02-01 08:00");
  EXPECT_EQ(plan_from(arguments, job, now), *job.order.start) << "the order says: nothing before";
  arguments.from.reset();
  EXPECT_EQ(plan_from(arguments, job, now), *job.order.start);
}

TEST(Style, ColourOnATerminalOnly) {
  Arguments arguments;
  Environment environment;
  EXPECT_FALSE(text_style(arguments, environment, Units::metric).colour);
  environment.terminal = true;
  EXPECT_TRUE(text_style(arguments, environment, Units::metric).colour);
  environment.no_color = true;
  EXPECT_FALSE(text_style(arguments, environment, Units::metric).colour);
  arguments.colour = Colour::always;
  EXPECT_TRUE(text_style(arguments, environment, Units::metric).colour) << "what is asked for on the command line wins over NO_COLOR";
  environment.no_color = false;
  arguments.colour = Colour::never;
  EXPECT_FALSE(text_style(arguments, environment, Units::metric).colour);
}

TEST(Style, UnitsAreTheShopsUnlessSaid) {
  Arguments arguments;
  EXPECT_EQ(text_style(arguments, {}, Units::us).units, Units::us);
  arguments.units = Units::metric;
  EXPECT_EQ(text_style(arguments, {}, Units::us).units, Units::metric);
}

TEST(Status, OfFindings) {
  using job::Severity;
  EXPECT_EQ(status_of(std::vector<job::Finding>{}, true), done);
  EXPECT_EQ(status_of(std::vector{finding(Severity::note)}, true), done);
  EXPECT_EQ(status_of(std::vector{finding(Severity::warning)}, false), done);
  EXPECT_EQ(status_of(std::vector{finding(Severity::warning)}, true), no_plan);
  EXPECT_EQ(status_of(std::vector{finding(Severity::error)}, false), no_plan);
}

TEST(Status, OfPlans) {
  job::Plan plan;
  EXPECT_EQ(status_of(plan, true), done);
  plan.status = job::Status::impossible;
  EXPECT_EQ(status_of(plan, false), no_plan);
  plan.status = job::Status::not_found;
  EXPECT_EQ(status_of(plan, false), no_plan);
}

std::optional<std::string> found(const std::string& variable, const std::set<std::string>& directories) {
  const auto path = find_schedules(variable, "/opt/shop/bin/coatday", [&](const auto& p) { return directories.contains(p.string()); });
  return path ? std::optional<std::string>(path->string()) : std::nullopt;
}

TEST(FindSchedules, InThisOrder) {
  const std::string installed = "/opt/shop/share/coatday/schedules";
  const std::string above = "/opt/shop/schedules";
  const std::string two_above = "/opt/schedules";
  EXPECT_EQ(found("/mine", {"/mine", installed, above, two_above}), "/mine");
  EXPECT_EQ(found("", {installed, above, two_above}), installed);
  EXPECT_EQ(found("", {above, two_above}), above);
  EXPECT_EQ(found("", {two_above}), two_above);
  EXPECT_EQ(found("", {}), std::nullopt);
  EXPECT_EQ(found("/mistyped", {installed}), std::nullopt) << "what was asked for is not replaced in silence";
}

}  // namespace
}  // namespace coatday::cli
