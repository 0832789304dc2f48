// A refusal says what to change: each line of help, written into the files, gives a plan.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "cli/run.h"
#include "quantity/text.h"
#include "quantity/time.h"
#include "tests/cli/typed.h"

namespace coatday::cli {
namespace {

using Json = nlohmann::json;

const std::string shop = R"(shop: cold shop
time zone: America/Chicago
hours: {mon-fri: "08:00-12:00, 13:00-17:00"}
methods: [brush, wipe]
drying places:
  - {name: trestles, kind: points, count: 3}
  - {name: rail, kind: hooks, count: 6}
  - {name: rack, kind: rack, count: 6}
air:
  timetable:
    - {heated: 07:00-18:00 at 18 °C, otherwise: 10 °C, humidity: 55 %}
)";

/// Invented: doors that lie flat while an oil varnish dries in November.
std::string order(const std::string& support) {
  return "order: doors\nshop: shop.yaml\nstart: 2027-11-15 08:00\nschedule: oil-varnish-three-coats\nspecies: oak-red\nsupport: " +
         support +
         "\npieces:\n  - piece: cupboard\n    parts:\n      - {part: door, shape: board, length: 700 mm, width: 400 mm, thickness: 20 mm, "
         "count: 3}\n";
}

Files changed(const std::string& set) {
  const std::string value = set.substr(set.find('=') + 1);
  if (set.starts_with("both faces within="))
    return {{"order.yaml", order("laid")}, {"shop.yaml", shop + "both faces within: " + value + "\n"}};
  EXPECT_TRUE(set.starts_with("pieces.1.parts.1.support=")) << set;
  return {{"order.yaml", order(value)}, {"shop.yaml", shop}};
}

TEST(Refusal, EachLineOfHelpGivesAPlan) {
  const Files files{{"order.yaml", order("laid")}, {"shop.yaml", shop}};
  const Outcome none = run({"plan", "order.yaml", "--format", "json"}, typed(files));
  ASSERT_EQ(none.status, no_plan) << none.err;
  const Json help = Json::parse(none.out)["result"]["proposals"];
  ASSERT_EQ(help.size(), 3U) << help.dump(1);
  for (const Json& one : help) {
    ASSERT_EQ(one["set"].size(), 1U) << one.dump();
    const std::string set = one["set"][0];
    const Outcome written = run({"plan", "order.yaml", "--format", "json"}, typed(changed(set)));
    EXPECT_EQ(written.status, done) << set;
    const auto ready = [](const Json& text) { return *parse_iso8601(text.get<std::string>()); };
    EXPECT_LE(ready(Json::parse(written.out)["result"]["ready_safe"]), ready(one["ready_safe"])) << set;
    EXPECT_EQ(run({"what-if", "order.yaml", "--set", set}, typed(files)).status, done) << set;
  }
}

TEST(Refusal, WhatIfWithNothingSetSaysWhatToSet) {
  const Files files{{"order.yaml", order("laid")}, {"shop.yaml", shop}};
  const Outcome text = run({"what-if", "order.yaml"}, typed(files));
  EXPECT_EQ(text.status, no_plan) << text.err;
  EXPECT_NE(text.out.find("There is no plan"), std::string::npos) << text.out;
  EXPECT_NE(text.out.find("--set \"pieces.1.parts.1.support=points\""), std::string::npos) << text.out;
}

/// With so small a limit on its cup the second face of a board cannot wait for longer; a larger one bears four days.
TEST(Refusal, NoLongerForTheSecondFaceThanABoardBears) {
  const auto offers_longer = [](const std::string& limit) {
    const std::string limited = order("laid") + "cup limit: " + limit + "\n";
    const Outcome none = run({"plan", "order.yaml", "--format", "json"}, typed({{"order.yaml", limited}, {"shop.yaml", shop}}));
    EXPECT_EQ(none.status, no_plan) << none.err;
    const Json help = Json::parse(none.out).at("result").at("proposals");
    return help.dump().find("both faces within=") != std::string::npos;
  };
  EXPECT_FALSE(offers_longer("0.1 mm"));
  EXPECT_TRUE(offers_longer("0.5 mm"));
}

}  // namespace
}  // namespace coatday::cli
