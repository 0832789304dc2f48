// Whole reports of hand-made plans, and what holds for every report.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "report/document/render_text.h"
#include "report/document/unicode.h"
#include "report/papers/area.h"
#include "report/papers/finishes.h"
#include "report/papers/report.h"
#include "report/papers/why.h"
#include "report/sections/advice.h"
#include "tests/report/golden.h"
#include "tests/report/sample_plan.h"

namespace coatday::report {
namespace {

const std::string order = "Library table, walnut on a steel trestle";

int widest_line(const std::string& text) {
  int widest = 0;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) widest = std::max(widest, Text(line).width());
  return widest;
}

long lines_of(const std::string& text) { return std::count(text.begin(), text.end(), '\n'); }

bool only_line_breaks_and_signs(std::string_view text) {
  while (!text.empty()) {
    const char32_t code = take_code_point(text);
    if (code != '\n' && harmless(code) != code) return false;
  }
  return true;
}

/// Every report that there is about a plan.
std::vector<std::string> reports(const job::Plan& plan, const std::string& name, const TextStyle& style) {
  const Texts texts = texts_of(plan, style.units);
  std::vector<std::string> all{plan_text(plan, name, style),
                               buy_text(plan, name, style),
                               findings_text(plan.findings, name, style),
                               render_text(events(plan, texts), style),
                               render_text(area(plan.faces, {plan.pieces[0].name}, texts), style),
                               breaches_text({{name, name}}, style)};
  for (const job::Event& event : plan.events) all.push_back(render_text(why(plan, event.id, texts).value(), style));
  finish::Catalogue catalogue;
  catalogue.products = plan.products;
  for (const auto& [id, product] : plan.products) all.push_back(finish_text(product, style));
  all.push_back(finishes_text(catalogue, style));
  return all;
}

TEST(PlanText, Table) { golden::expect_golden("report/golden/table.txt", plan_text(sample::table(), order, {})); }
TEST(PlanText, InUsUnits) {
  golden::expect_golden("report/golden/table_us.txt", plan_text(sample::table(), order, {Units::us, false, 80}));
}
TEST(PlanText, WithAHole) { golden::expect_golden("report/golden/with_hole.txt", plan_text(sample::with_hole(), order, {})); }
TEST(PlanText, Impossible) { golden::expect_golden("report/golden/impossible.txt", plan_text(sample::impossible(), order, {})); }
TEST(PlanText, SaysThatNotEveryChangeWasTriedEvenWhereNoneHelps) {
  const std::string words = "Not every change was tried";
  job::Plan none = sample::impossible();
  none.proposals.clear();
  EXPECT_EQ(plan_text(none, order, {}).find(words), std::string::npos);
  none.help_cut_off = true;
  EXPECT_NE(plan_text(none, order, {}).find(words), std::string::npos);
  const job::Plan table = sample::table();
  const Texts texts = texts_of(table, Units::metric);
  EXPECT_FALSE(advice(table, {}, texts));
  job::Advice cut;
  cut.cut_off = true;
  EXPECT_TRUE(advice(table, cut, texts));
}

TEST(WhyText, CoatInItsWindow) {
  golden::expect_golden("report/golden/why.txt",
                        render_text(why(sample::table(), "table/top/clear-2", texts_of(sample::table(), Units::metric)).value(), {}));
}
TEST(WhyText, NoSuchEvent) { EXPECT_FALSE(why(sample::table(), "table/top/clear-9", {}).has_value()); }
TEST(BuyText, Table) { golden::expect_golden("report/golden/buy.txt", buy_text(sample::table(), order, {})); }
TEST(AreaText, Table) {
  golden::expect_golden("report/golden/area.txt", render_text(area(sample::table().faces, {"library table"}, {}), {}));
}
TEST(FinishText, Clear) { golden::expect_golden("report/golden/finish.txt", finish_text(sample::table().products.at("clear"), {})); }

TEST(PlanText, FirstScreenAnswersFourQuestions) {
  const std::string text = plan_text(sample::table(), order, {});
  const std::string screen = text.substr(0, text.find("\n\n"));
  EXPECT_NE(screen.find("deliver   Tue 19 Jan 18:00, safe to promise"), std::string::npos);
  EXPECT_NE(screen.find("2 days to spare"), std::string::npos);
  EXPECT_NE(screen.find("1 x 1 l water-based clear"), std::string::npos);
  EXPECT_NE(screen.find("both sides alike on both wooden parts"), std::string::npos);
  EXPECT_NE(screen.find("no earlier day is possible with these people, places and air"), std::string::npos);
}

TEST(PlanText, SaysHowManyDaysSoonerItCouldBe) {
  job::Plan plan = sample::table();
  plan.ready_bound = plan.from;
  EXPECT_NE(plan_text(plan, order, {}).find("could at most be ready 7 days sooner (not before"), std::string::npos)
      << plan_text(plan, order, {});
  plan.proven = true;
  EXPECT_NE(plan_text(plan, order, {}).find("no earlier day is possible with these people, places, batches"), std::string::npos);
}

TEST(PlanText, SaysHowMuchLatenessCannotBeHelped) {
  job::Plan plan = sample::table();
  plan.pieces[0].due = *plan.ready - date::days(3);
  plan.pieces[0].slack = -Hours(date::days(3));
  plan.days_late_bound = 2;
  const auto says = [&plan](const char* words) { return plan_text(plan, order, {}).find(words) != std::string::npos; };
  EXPECT_TRUE(says("late by 3 days; at least 2 days of them cannot be avoided")) << plan_text(plan, order, {});
  plan.days_late_bound = 3;
  EXPECT_TRUE(says("late by 3 days; no plan with these batches is less late"));
}

TEST(PlanText, LatenessIsSaid) {
  job::Plan plan = sample::table();
  plan.pieces[0].slack = Hours(-6);
  EXPECT_NE(plan_text(plan, order, {}).find("6 h late"), std::string::npos);
}

TEST(PlanText, NotFoundIsNotCalledImpossible) {
  job::Plan plan = sample::impossible();
  plan.status = job::Status::not_found;
  plan.contradiction.clear();
  const std::string text = plan_text(plan, order, {});
  EXPECT_NE(text.find("there may be one all the same"), std::string::npos);
  EXPECT_EQ(text.find("cannot all be so"), std::string::npos);
}

/// A film of white spirit evaporates first and oxidises later: a closed room in which air hardly moves slows both.
TEST(PlanText, TheRoomsRatesAreTold) {
  job::Plan plan = sample::table();
  const auto told = [&](const char* words) { return plan_text(plan, order, {}).find(words) != std::string::npos; };
  EXPECT_FALSE(told("  room ")) << "an open one where air moves as usual";
  plan.shop.ventilation.closed = true;
  plan.shop.ventilation.air_movement = 0.5;
  plan.products.begin()->second.mechanism = finish::Mechanism::white_spirit;
  EXPECT_TRUE(
      told("  room      closed, so that oxidising films go on at half their rate; its air\n"
           "            moves so that films dry by evaporation 0.5 times as fast as usual:\n"
           "            ratios only, judgement\n"))
      << plan_text(plan, order, {});
  for (auto& [id, product] : plan.products) product.mechanism = finish::Mechanism::epoxy;
  EXPECT_FALSE(told("  room ")) << "nothing to either";
}

TEST(PlanText, PlainWithoutColour) { EXPECT_EQ(plan_text(sample::table(), order, {}).find('\x1b'), std::string::npos); }

TEST(PlanText, ColourChangesNoWord) {
  const std::string coloured = plan_text(sample::with_hole(), order, {Units::metric, true, 80});
  EXPECT_NE(coloured.find("\x1b[0;1;31m--\x1b[0m"), std::string::npos) << "a hole is seen from across the room";
  std::string plain;
  for (std::size_t i = 0; i < coloured.size(); ++i) {
    if (coloured[i] == '\x1b') i = coloured.find('m', i) + 1;
    while (i < coloured.size() && coloured[i] == '\x1b') i = coloured.find('m', i) + 1;
    if (i < coloured.size()) plain += coloured[i];
  }
  EXPECT_EQ(plain, plan_text(sample::with_hole(), order, {}));
}

TEST(EveryReport, IsNoWiderThanThePage) {
  const std::string user_words = "a very long name in which nobody would look for a break, " + std::string(200, 'x');
  for (const int columns : {80, 60, 132}) {
    for (const Units units : {Units::metric, Units::us}) {
      const TextStyle style{units, false, columns};
      for (const job::Plan& plan : {sample::table(), sample::with_hole(), sample::impossible(), sample::hostile(user_words)}) {
        for (const std::string& text : reports(plan, order, style)) EXPECT_LE(widest_line(text), columns) << text;
      }
    }
  }
}

TEST(EveryReport, WideSignsCountTwice) {
  for (const std::string& text : reports(sample::hostile("長い名前の家具と 引き出し と とても長い説明文がここに続きます"), order, {})) {
    EXPECT_LE(widest_line(text), 80) << text;
  }
}

TEST(EveryReport, CannotSteerATerminal) {
  const std::string evil =
      "<script>alert(1)</script>\x1b[2J\x1b]0;title\x07 two\nlines\r\b\x7f \xc2\x9b"
      "31m \xe2\x80\xae"
      "right to left \xd7\xa9\xd7\x9c\xd7\x95\xd7\x9d \xe2\x81\xa6 \xff\xc3( broken";
  for (const std::string& text : reports(sample::hostile(evil), evil, {})) EXPECT_TRUE(only_line_breaks_and_signs(text)) << text;
  EXPECT_NE(plan_text(sample::hostile(evil), evil, {}).find("<script>"), std::string::npos) << "text for a terminal needs no other care";
}

TEST(Moved, WhatFromWhenToWhen) {
  job::Plan plan = sample::table();
  job::Changes changes;
  changes.moved.push_back({0, plan.events[0].start - std::chrono::hours(24)});
  changes.stayed = 4;
  changes.unknown = 1;
  plan.changes = changes;
  const std::string text = plan_text(plan, order, {});
  EXPECT_NE(text.find("Moved  1 step against the earlier plan\n"), std::string::npos) << text;
  EXPECT_NE(text.find("4 steps stay where they were; 1 step of the earlier plan is not in this one."), std::string::npos) << text;
  EXPECT_EQ(plan_text(sample::table(), order, {}).find("Moved"), std::string::npos) << "no earlier plan, nothing to say";
}

TEST(Moved, AtMostAScreen) {
  job::Plan plan = sample::table();
  plan.changes = job::Changes{};
  for (int i = 0; i < 60; ++i) plan.changes->moved.push_back({0, plan.events[0].start - std::chrono::hours(i + 1)});
  const std::string text = plan_text(plan, order, {});
  EXPECT_LE(lines_of(text), lines_of(plan_text(sample::table(), order, {})) + 24);
  EXPECT_NE(text.find(" more\n"), std::string::npos) << text;
}

RC_GTEST_PROP(EveryReport, AnyBytesAreHarmless, (const std::string& bytes)) {
  const job::Plan plan = sample::hostile(bytes);
  const std::string text = plan_text(plan, bytes, {});
  RC_ASSERT(only_line_breaks_and_signs(text));
  RC_ASSERT(widest_line(text) <= 80);
}

}  // namespace
}  // namespace coatday::report
