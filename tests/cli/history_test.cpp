// What a history says that cannot be so is a mistake of the file, whatever is asked. And its ids mean the same in any company.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>

#include "cli/run.h"
#include "tests/cli/typed.h"

namespace coatday::cli {
namespace {

const std::string shop = R"(shop: sample shop
time zone: America/Chicago
hours: {mon-sun: "08:00-17:00"}
methods: [brush]
drying places: [{name: trestle, kind: points, count: 4}]
air: {constant: {temperature: 20 °C, humidity: 45 %}}
currency: EUR
rates: {hour: 50}
)";

std::string order(const std::string& name, const std::string& history) {
  return "order: " + name + R"(
shop: shop.yaml
start: 2027-01-18 08:00
schedule: water-clear-three-coats
species: walnut
pieces:
  - piece: s
    parts: [{part: b, shape: board, length: 900 mm, width: 250 mm, thickness: 19 mm, support: points}]
)" + (history.empty() ? "" : "history:\n" + history);
}

std::string done(const std::string& event, const std::string& start, const std::string& end) {
  return "  - {event: " + event + ", start: 2027-01-18 " + start + ", end: 2027-01-18 " + end + "}\n";
}

std::string raised(const std::string& piece) {
  return done(piece + "/b/sand-to-150", "08:00", "08:15") + done(piece + "/b/raise-the-grain/first", "08:45", "08:50") +
         done(piece + "/b/raise-the-grain/turn", "09:55", "10:00") + done(piece + "/b/raise-the-grain/second", "10:00", "10:05");
}

Outcome run_with(const std::vector<std::string>& words, const std::string& history) {
  return run(words, typed({{"order.yaml", order("anna", history)}, {"other.yaml", order("bert", "")}, {"shop.yaml", shop}}));
}

std::string said(const std::string& history, const std::vector<std::string>& more = {}) {
  std::vector<std::string> words{"plan", "order.yaml"};
  words.insert(words.end(), more.begin(), more.end());
  const Outcome outcome = run_with(words, history);
  EXPECT_EQ(outcome.status, bad_input);
  EXPECT_EQ(outcome.out, "");
  return outcome.err;
}

bool says(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST(HistoryInFiles, AMistypedEventIsAMistakeOfTheFileForEveryCommand) {
  for (const char* command : {"plan", "check", "area", "buy", "card", "quote", "sheet", "calendar", "why", "wood", "what-if"}) {
    const Outcome outcome = run_with({command, "order.yaml"}, done("s/b/sand-to-15O", "08:00", "08:15"));
    EXPECT_EQ(outcome.status, bad_input) << command;
    EXPECT_TRUE(says(outcome.err, "order.yaml:10:13: error: unknown event 's/b/sand-to-15O'; did you mean 's/b/sand-to-150'?\n"))
        << command << outcome.err;
  }
}

TEST(HistoryInFiles, AnEventWithoutItsSideIsToldWithOneOfItsSides) {
  EXPECT_TRUE(says(said(done("s/b/raise-the-grain", "08:00", "08:15")), "did you mean 's/b/raise-the-grain/first'?"));
}

TEST(HistoryInFiles, AnEventTwiceIsAMistake) {
  const std::string twice = done("s/b/sand-to-150", "08:00", "08:15") + done("s/b/sand-to-150", "09:00", "09:15");
  EXPECT_TRUE(says(said(twice), "order.yaml:11:13: error: 's/b/sand-to-150' is recorded twice; the first time is in line 10"));
}

TEST(HistoryInFiles, TheSecondSideBeforeTheFirstIsAMistake) {
  const std::string swapped = done("s/b/sand-to-150", "08:00", "08:15") + done("s/b/raise-the-grain/first", "10:00", "10:05") +
                              done("s/b/raise-the-grain/second", "08:45", "08:50");
  EXPECT_TRUE(says(said(swapped), "'s/b/raise-the-grain/second' begins before 's/b/raise-the-grain/first' ends, which it follows"));
}

TEST(HistoryInFiles, AnEventThatEndsBeforeItStartsIsAMistake) {
  EXPECT_TRUE(says(said(done("s/b/sand-to-150", "09:00", "08:15")), "this ends before it starts"));
}

TEST(HistoryInFiles, WhatEndsAfterFromIsNotDone) {
  const std::string told = said(done("s/b/sand-to-150", "08:00", "08:15"), {"--from", "2027-01-18 08:10"});
  EXPECT_TRUE(says(told, "'s/b/sand-to-150' ends at Mon 18 Jan 08:15, after --from Mon 18 Jan 08:10; a history holds what is done"))
      << told;
}

TEST(HistoryInFiles, WithoutFromThePlanGoesOnWhereTheHistoryEnds) {
  const Outcome outcome = run_with({"plan", "order.yaml"}, raised("s"));
  EXPECT_EQ(outcome.status, 0) << outcome.err;
  EXPECT_EQ(run_with({"plan", "order.yaml", "--from", "2027-01-18 10:05"}, raised("s")).out, outcome.out);
}

// Whether wood has to be measured depends on the moment from which one plans. What is measured stays so.
TEST(HistoryInFiles, AMeasurementThatIsNoLongerNeededIsDone) {
  const Outcome outcome = run_with({"plan", "order.yaml"}, done("s/b/measure", "08:00", "08:05"));
  EXPECT_EQ(outcome.status, 0) << outcome.err;
  EXPECT_TRUE(says(outcome.out, "measure the moisture"));
}

TEST(HistoryInFiles, IdsMeanTheSameAloneAndWithOtherOrders) {
  const std::vector<std::string> alone{"plan", "order.yaml"}, together{"plan", "order.yaml", "other.yaml"};
  for (const auto& words : {alone, together}) {
    const Outcome bare = run_with(words, raised("s")), with_order = run_with(words, raised("anna-s"));
    EXPECT_EQ(bare.status, 0) << bare.err;
    EXPECT_EQ(with_order.status, 0) << with_order.err;
    EXPECT_EQ(bare.out, with_order.out);
  }
  EXPECT_EQ(run_with({"why", "order.yaml", "anna-s/b/clear-1/first"}, "").status, 0);
}

TEST(HistoryInFiles, AnEarlierPlanOfSeveralOrdersIsKeptByOneOfThem) {
  const std::string both = run_with({"plan", "order.yaml", "other.yaml", "--format", "json"}, "").out;
  const auto keep = [&](const std::vector<std::string>& words) {
    return run(words, typed({{"order.yaml", order("anna", "")}, {"old.json", both}, {"shop.yaml", shop}}));
  };
  const Outcome why = keep({"why", "order.yaml", "s/b/clear-2/first", "--keep", "old.json"});
  const Outcome before = run_with({"why", "order.yaml", "other.yaml", "anna-s/b/clear-2/first"}, "");
  const auto from = [](const std::string& text) { return text.substr(text.find("  from "), 40); };
  EXPECT_EQ(from(why.out), from(before.out));
}

/// What the plan says until this event, as done.
std::string done_until(const std::string& last, const nlohmann::json& events) {
  std::string history = "history:\n";
  const auto hour = [](std::string instant) { return instant.substr(0, 10) + " " + instant.substr(11, 5); };
  for (const auto& event : events) {
    history +=
        "  - {event: " + event["id"].get<std::string>() + ", start: " + hour(event["start"]) + ", end: " + hour(event["end"]) + "}\n";
    if (event["id"] == last) return history;
  }
  ADD_FAILURE() << "no event " << last;
  return history;
}

/// Enamel may not go over enamel of more than a week without a scuff. One side has its coat, the other is too late.
TEST(HistoryInFiles, AMissedWindowIsScuffedOnTheSideThatIsLeft) {
  const std::string plate =
      "order: gate\nshop: shop.yaml\nstart: 2027-01-18 08:00\nschedule: metal-enamel\npieces:\n  - piece: s\n    parts: "
      "[{part: plate, shape: board, length: 600 mm, width: 250 mm, thickness: 6 mm, material: steel}]\n";
  const auto planned = [&](const std::string& history, const std::vector<std::string>& more) {
    std::vector<std::string> words{"plan", "order.yaml", "--format", "json"};
    words.insert(words.end(), more.begin(), more.end());
    const Outcome outcome = run(words, typed({{"order.yaml", plate + history}, {"shop.yaml", shop}}));
    EXPECT_EQ(outcome.status, cli::done) << outcome.err;
    return nlohmann::json::parse(outcome.out);
  };
  const nlohmann::json later = planned(done_until("s/plate/enamel-2/first", planned("", {})["events"]), {"--from", "2027-03-15 08:00"});
  std::map<std::string, nlohmann::json> events;
  for (const auto& event : later["events"]) events[event["id"]] = event;
  ASSERT_TRUE(events.contains("s/plate/enamel-2-scuff")) << later["events"].dump(1);
  const nlohmann::json scuff = events["s/plate/enamel-2-scuff"], second = events["s/plate/enamel-2/second"];
  EXPECT_EQ(scuff["faces"], second["faces"]);
  EXPECT_LE(events["s/plate/enamel-2/turn"]["end"], scuff["start"]);
  EXPECT_LE(scuff["end"], second["start"]);
  // Where both sides were scuffed before the first coat, the second needs no other.
  const nlohmann::json missed = planned(done_until("s/plate/enamel-1/second", planned("", {})["events"]), {"--from", "2027-03-15 08:00"});
  const nlohmann::json again = planned(done_until("s/plate/enamel-2/first", missed["events"]), {"--from", "2027-03-20 08:00"});
  EXPECT_EQ(
      std::count_if(again["events"].begin(), again["events"].end(), [](const auto& e) { return e["id"] == "s/plate/enamel-2-scuff"; }), 1);
}

}  // namespace
}  // namespace coatday::cli
