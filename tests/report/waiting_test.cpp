// Waiting is as visible as work.
#include <gtest/gtest.h>

#include "report/document/render_text.h"
#include "report/sections/days.h"
#include "report/sections/event_facts.h"
#include "report/sections/waiting.h"
#include "tests/report/sample_plan.h"

namespace coatday::report {
namespace {

/// A space that does not break as any other.
std::string plain(std::string words) {
  const std::string hard = "\u00a0";
  for (std::size_t at = words.find(hard); at != std::string::npos; at = words.find(hard)) words.replace(at, hard.size(), " ");
  return words;
}
std::string night(const job::Plan& plan, Instant from) { return plain(joined(night_text(plan, from), "\n")); }
std::string idle(const job::Plan& plan, Instant from, Instant until) { return plain(idle_text(plan, from, until)); }

std::string text_of(const job::Plan& plan) { return render(section_lines(days(plan, {Units::metric, plan.shop.zone}).value(), {}), false); }

TEST(Night, WhatDriesAndForWhat) {
  EXPECT_EQ(night(sample::table(), sample::at(11, 13, 30)), "oil stain on top dries; clear coat 1 from Tue 12 Jan 13:10");
}

TEST(Night, NothingDriesBeforeTheFirstCoat) { EXPECT_EQ(night(sample::table(), sample::at(11, 10)), ""); }

TEST(Night, TheNextStepOfTheSameLoadIsNamedBeforeOtherWork) {
  job::Plan plan = sample::table();
  plan.events.back().after.push_back({"table/top/stain", finish::Stage::handle, sample::at(11, 18), "dry to handle"});
  EXPECT_EQ(night(plan, sample::at(11, 13, 30)), "oil stain on top dries; clear coat 1 from Tue 12 Jan 13:10");
}

TEST(Idle, ClockThatHoldsUp) {
  EXPECT_EQ(idle(sample::table(), sample::at(12, 13, 45), sample::at(12, 15)), "clear coat 1 on top dries; turn onto points from 14:50");
}

TEST(Idle, TheLastOfSeveralWaitsDecides) {
  job::Plan plan = sample::table();
  plan.events[4].after.push_back({"table/top/stain", finish::Stage::handle, sample::at(12, 13, 50), "dry to handle"});
  EXPECT_EQ(idle(plan, sample::at(12, 13, 45), sample::at(12, 15)), "clear coat 1 on top dries; turn onto points from 14:50");
}

TEST(Idle, ElseTheReasonOfTheNextStep) {
  job::Plan plan = sample::table();
  plan.events[7].why = "the air holds it up";
  EXPECT_EQ(idle(plan, sample::at(15, 8), sample::at(15, 9)), "clear coat 2: the air holds it up");
}

TEST(Idle, BreaksAndMomentsAreNotWaiting) {
  EXPECT_EQ(idle(sample::table(), sample::at(11, 12), sample::at(11, 13)), "");
  EXPECT_EQ(idle(sample::table(), sample::at(12, 15, 45), sample::at(12, 15, 55)), "");
}

TEST(Days, QuietDaysAreOneLine) {
  const std::string text = text_of(sample::table());
  EXPECT_NE(text.find("Wed 13 Jan - Thu 14 Jan  no work on this order; 12-20 °C, 32-45 % RH"), std::string::npos) << text;
  EXPECT_NE(text.find("Sat 16 Jan - Sun 17 Jan  closed; 12-20 °C, 32-45 % RH; drying goes on"), std::string::npos) << text;
}

TEST(Days, DaysBeforeThePlanBeginsAreNotClosedByThat) {
  job::Plan plan = sample::table();
  plan.from = sample::at(18, 8);
  std::erase_if(plan.working, [&](const shop::WorkingTime& shift) { return shift.begin < plan.from; });
  plan.shop.week = {{date::Monday, std::chrono::hours(8), std::chrono::hours(17)},
                    {date::Wednesday, std::chrono::hours(8), std::chrono::hours(17)}};
  const std::string text = text_of(plan);
  EXPECT_NE(text.find("Wed 13 Jan  no work on this order"), std::string::npos) << text;
  EXPECT_NE(text.find("Thu 14 Jan  closed"), std::string::npos) << text;
}

}  // namespace
}  // namespace coatday::report
