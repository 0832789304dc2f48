// Exit statuses and formats of the commands, on the samples.

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>

#include "cli/run.h"
#include "tests/support/source_dir.h"

namespace coatday {
namespace {

namespace fs = std::filesystem;

cli::Outcome run(const std::vector<std::string>& words) {
  cli::Environment environment;
  environment.read = [](const fs::path& path) { return input::read_from_disk()(fs::path(source_dir()) / path); };
  environment.schedules = fs::path(source_dir()) / "schedules";
  return cli::run(words, environment);
}

std::string order(const std::string& sample) { return "samples/" + sample + "/order.yaml"; }

struct Case {
  std::string name;
  std::vector<std::string> words;
  int status;
};

class Statuses : public testing::TestWithParam<Case> {};

TEST_P(Statuses, AreAsDocumented) {
  const cli::Outcome outcome = run(GetParam().words);
  EXPECT_EQ(outcome.status, GetParam().status) << outcome.err;
  EXPECT_EQ(outcome.status == cli::bad_input, !outcome.err.empty()) << outcome.err;
}

INSTANTIATE_TEST_SUITE_P(
    All, Statuses,
    testing::Values(Case{"plan", {"plan", order("library-table")}, 0}, Case{"refused_by_air", {"plan", order("damp-july")}, 1},
                    Case{"face_left_behind", {"plan", order("top-face-only")}, 1},
                    Case{"checked_face_left_behind", {"check", order("top-face-only")}, 1},
                    Case{"declared", {"plan", order("top-face-declared")}, 0},
                    Case{"declared_strict", {"plan", "--strict", order("top-face-declared")}, 1},
                    Case{"too_much_vapour", {"plan", order("small-fan-refused")}, 1}, Case{"check", {"check", order("dining-table")}, 0},
                    Case{"area", {"area", order("dining-table")}, 0}, Case{"buy", {"buy", order("dining-table")}, 0},
                    Case{"finishes", {"finishes"}, 0}, Case{"a_finish", {"finishes", "water-clear"}, 0},
                    Case{"schedules", {"schedules"}, 0}, Case{"help", {"--help"}, 0}, Case{"no_file", {"plan", "samples/none.yaml"}, 2},
                    Case{"no_command", {"plna"}, 2}, Case{"no_instant", {"plan", order("library-table"), "--from", "2027-02-30 08:00"}, 2},
                    Case{"unknown_finish", {"finishes", "water-claer"}, 2}),
    [](const auto& instance) { return instance.param.name; });

TEST(Json, HoldsWhatTheSchemaNames) {
  const cli::Outcome outcome = run({"plan", order("library-table"), "--format", "json"});
  ASSERT_EQ(outcome.status, 0);
  const auto plan = nlohmann::json::parse(outcome.out);
  EXPECT_EQ(plan.at("schema"), "coatday-plan/3");
  for (const char* key : {"program", "from", "shop", "air", "finishes", "pieces", "events", "places", "purchase", "warnings", "result"}) {
    EXPECT_TRUE(plan.contains(key)) << key;
  }
  EXPECT_EQ(plan.at("result").at("status"), "planned");
}

/// By eye and hand: the visits of the plan, and of them those in which nothing is done but turning.
TEST(Json, NoVisitIsForTurningAlone) {
  for (const char* sample : {"dining-table", "bowls-and-boards", "refectory-table", "shut-room", "logged-shop", "small-fan"}) {
    const cli::Outcome outcome = run({"plan", order(sample), "--format", "json"});
    ASSERT_EQ(outcome.status, 0) << sample;
    const auto plan = nlohmann::json::parse(outcome.out);
    std::map<std::string, std::string> kinds;
    for (const auto& event : plan.at("events")) kinds[event.at("id")] = event.at("kind");
    std::size_t turns = 0;
    for (const auto& [id, kind] : kinds) turns += kind == "turn" ? 1U : 0U;
    EXPECT_GT(turns, 0U) << sample;
    for (const auto& visit : plan.at("visits")) {
      const auto& events = visit.at("events");
      EXPECT_FALSE(std::all_of(events.begin(), events.end(), [&](const auto& id) { return kinds.at(id) == "turn"; }))
          << sample << ": " << visit.dump();
    }
  }
}

TEST(Json, OfWoodHoldsEachPartsAnswers) {
  const cli::Outcome outcome = run({"wood", order("refectory-table"), "--format", "json"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const auto wood = nlohmann::json::parse(outcome.out);
  EXPECT_EQ(wood.at("schema"), "coatday-wood/2");
  ASSERT_EQ(wood.at("parts").size(), 2U);
  const auto& top = wood.at("parts")[0];
  EXPECT_FALSE(top.at("ready").at("ready"));
  EXPECT_NEAR(top.at("ready").at("moisture_percent").get<double>(), 10.1, 0.2);
  const auto& board = top.at("board");
  EXPECT_EQ(board.at("width_mm"), 920);
  EXPECT_EQ(board.at("cups").size(), 4U);
  EXPECT_EQ(board.at("seasons").size(), 4U);
  EXPECT_EQ(board.at("fixings")[3].at("verdict"), "short");
  EXPECT_FALSE(board.at("one_face_coated").empty());
}

/// What the wood asks is in the plan itself: its gate, its limit and its warnings.
TEST(Json, OfThePlanTellsOfItsWood) {
  const cli::Outcome outcome = run({"plan", order("refectory-table"), "--format", "json"});
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  for (const char* code : {"moisture", "fixing-short", "cup"}) {
    EXPECT_NE(outcome.out.find("\"code\":\"" + std::string(code) + "\""), std::string::npos) << code;
  }
  EXPECT_NE(outcome.out.find("/measure\""), std::string::npos);
  const cli::Outcome why = run({"why", order("refectory-table"), "table/top/clear-1/second"});
  EXPECT_NE(why.out.find("may cup more than 3 mm"), std::string::npos) << why.out;
}

/// Units are for the reader: the plan is the same, instant by instant.
TEST(Json, DoesNotDependOnTheUnitsOfTheReport) {
  const auto events = [](const char* units) {
    const cli::Outcome outcome = run({"plan", order("library-table"), "--format", "json", "--units", units});
    return nlohmann::json::parse(outcome.out).at("events");
  };
  const auto us = events("us"), metric = events("metric");
  ASSERT_EQ(us.size(), metric.size());
  for (std::size_t i = 0; i < us.size(); ++i) EXPECT_EQ(us[i].at("start"), metric[i].at("start"));
}

TEST(Why, ExplainsEveryEvent) {
  const cli::Outcome outcome = run({"plan", order("library-table"), "--format", "json"});
  const auto plan = nlohmann::json::parse(outcome.out);
  for (const auto& event : plan.at("events")) {
    const cli::Outcome why = run({"why", order("library-table"), event.at("id").get<std::string>()});
    EXPECT_EQ(why.status, 0) << event.at("id");
    EXPECT_FALSE(why.out.empty());
  }
}

}  // namespace
}  // namespace coatday
