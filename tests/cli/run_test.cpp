// The program without a process: an invented shop in memory, the shipped schedules from disk.
#include "cli/run.h"
#include "tests/cli/typed.h"

#include <gtest/gtest.h>

#include <map>

#include "tests/report/golden.h"

namespace coatday::cli {
namespace {

using Args = std::vector<std::string>;

const std::string shop = R"(shop: sample shop
time zone: America/Chicago
units: metric
hours: {mon-fri: "08:00-12:00, 13:00-17:00"}
methods: [brush, pad, wipe]
drying places:
  - {name: trestle, kind: points, count: 4}
air:
  constant: {temperature: 20 °C, humidity: 45 %}
)";

std::string order(const std::string& extra = "", const std::string& name = "shelf") {
  return "order: \"" + name + R"("
shop: shop.yaml
start: 2027-01-11 08:00
pieces:
  - piece: shelf
    species: walnut-black
    schedule: water-clear-three-coats
    parts:
      - {part: board, shape: board, length: 900 mm, width: 250 mm, thickness: 20 mm)" +
         extra + "}\n";
}

Environment usual() { return typed({{"order.yaml", order()}, {"shop.yaml", shop}}); }

TEST(Run, PlanIsFeasible) {
  const Outcome outcome = run({"plan", "order.yaml"}, usual());
  EXPECT_EQ(outcome.status, done) << outcome.out << outcome.err;
  EXPECT_EQ(outcome.err, "");
  EXPECT_TRUE(outcome.out.starts_with("shelf ")) << outcome.out;
  EXPECT_NE(outcome.out.find("from Mon 11 Jan 2027"), std::string::npos);
}

TEST(Run, SameWordsGiveTheSameText) { EXPECT_EQ(run({"plan", "order.yaml"}, usual()).out, run({"plan", "order.yaml"}, usual()).out); }

TEST(Run, Json) {
  const Outcome outcome = run({"plan", "order.yaml", "--format", "json"}, usual());
  EXPECT_EQ(outcome.status, done) << outcome.err;
  EXPECT_TRUE(outcome.out.starts_with("{\n  \"schema\": \"coatday-plan/3\""));
}

TEST(Run, APageGoesToAFile) {
  const Outcome outcome = run({"page", "order.yaml", "-o", "page-of-a-test.html"}, usual());
  EXPECT_EQ(outcome.status, done) << outcome.err;
  EXPECT_EQ(outcome.out, "page-of-a-test.html: the plan's page\n");
  ASSERT_TRUE(outcome.file);
  EXPECT_NE(outcome.file->content.find("<h1><bdi>shelf</bdi></h1>"), std::string::npos);
}

TEST(Run, APageWithoutAFileIsAMistake) {
  const Outcome outcome = run({"page", "order.yaml"}, usual());
  EXPECT_EQ(outcome.status, bad_input);
  EXPECT_EQ(outcome.err, "coatday: error: a page goes to a file; expected -o and its name, such as -o plan.html\n");
}

TEST(Run, NoPlanIsStatusOneWithReasons) {
  std::string cold = shop;
  cold.replace(cold.find("20 °C"), std::string("20 °C").size(), "2 °C");
  const Outcome outcome = run({"plan", "order.yaml"}, typed({{"order.yaml", order()}, {"shop.yaml", cold}}));
  EXPECT_EQ(outcome.status, no_plan) << outcome.out << outcome.err;
  EXPECT_NE(outcome.out.find("impossible"), std::string::npos) << outcome.out;
}

TEST(Run, MistakesInFilesAreStatusTwoOnTheErrorStream) {
  const Outcome outcome = run({"plan", "order.yaml"}, typed({{"order.yaml", order(", colour: red")}, {"shop.yaml", shop}}));
  EXPECT_EQ(outcome.status, bad_input);
  EXPECT_EQ(outcome.out, "");
  EXPECT_NE(outcome.err.find("order.yaml:9:"), std::string::npos) << outcome.err;
}

TEST(Run, MissingFile) {
  const Outcome outcome = run({"plan", "nowhere.yaml"}, usual());
  EXPECT_EQ(outcome.status, bad_input);
  EXPECT_NE(outcome.err.find("nowhere.yaml"), std::string::npos) << outcome.err;
}

TEST(Run, NoSchedules) {
  Environment w = usual();
  w.schedules.reset();
  for (const char* command : {"plan", "buy", "why", "check", "area"}) EXPECT_EQ(run({command, "order.yaml"}, w).status, bad_input);
  EXPECT_NE(run({"finishes"}, w).err.find("COATDAY_SCHEDULES"), std::string::npos);
}

TEST(Run, ReaderThatThrowsIsOurFault) {
  Environment w = usual();
  w.read = [](const std::filesystem::path&) -> input::FileText { throw std::runtime_error("out of luck"); };
  const Outcome outcome = run({"area", "order.yaml"}, w);
  EXPECT_EQ(outcome.status, our_fault);
  EXPECT_NE(outcome.err.find("bug in coatday"), std::string::npos);
}

TEST(Run, TooLittleMemoryIsNoBug) {
  Environment w = usual();
  w.read = [](const std::filesystem::path&) -> input::FileText { throw std::bad_alloc(); };
  const Outcome outcome = run({"area", "order.yaml"}, w);
  EXPECT_EQ(outcome.status, no_plan);
  EXPECT_EQ(outcome.err, "coatday: error: this needs more memory than there is; plan fewer parts or orders at once, or free some\n");
}

TEST(Run, AControlCharacterInAWordIsNotPrinted) {
  const Outcome outcome = run({"plan", "or\x1b[2Jder\n.yaml"}, usual());
  EXPECT_EQ(outcome.status, bad_input);
  EXPECT_NE(outcome.err.find("'or?[2Jder?.yaml'"), std::string::npos) << outcome.err;
}

TEST(Run, EveryCommandAnswers) {
  for (const char* command : {"plan", "buy", "quote", "card", "sheet", "calendar", "why", "check", "area"}) {
    const Outcome outcome = run({command, "order.yaml"}, usual());
    EXPECT_EQ(outcome.status, done) << command << outcome.err;
    EXPECT_FALSE(outcome.out.empty()) << command;
  }
  for (const char* command : {"finishes", "schedules"}) {
    const Outcome outcome = run({command}, usual());
    EXPECT_EQ(outcome.status, done) << command << outcome.err;
    EXPECT_FALSE(outcome.out.empty()) << command;
  }
}

TEST(Run, WhyAnEvent) {
  const std::string listed = run({"why", "order.yaml"}, usual()).out;
  const std::size_t at = listed.find("shelf/");
  ASSERT_NE(at, std::string::npos) << listed;
  const std::string id = listed.substr(at, listed.find(' ', at) - at);
  const Outcome outcome = run({"why", "order.yaml", id}, usual());
  EXPECT_EQ(outcome.status, done) << outcome.err;
  EXPECT_NE(outcome.out.find(id), std::string::npos);
  const Outcome slip = run({"why", "order.yaml", id + "x"}, usual());
  EXPECT_EQ(slip.status, bad_input);
  EXPECT_NE(slip.err.find("did you mean '" + id + "'?"), std::string::npos) << slip.err;
}

TEST(Run, FinishInAnAir) {
  const Outcome text = run({"finishes", "water-clear", "--at", "18 C 65 %"}, usual());
  EXPECT_EQ(text.status, done) << text.err;
  EXPECT_NE(text.out.find("(water-clear) at 18 °C, 65 % RH"), std::string::npos) << text.out;
  const Outcome us = run({"finishes", "water-clear", "--at", "65 °F 65 %", "--units", "us"}, usual());
  EXPECT_NE(us.out.find("65 °F"), std::string::npos) << us.out << us.err;
  const Outcome json = run({"finishes", "water-clear", "--at", "23 °C 50 %", "--format", "json"}, usual());
  EXPECT_NE(json.out.find("\"recoat\": 4.0"), std::string::npos) << json.out << json.err;
  EXPECT_NE(run({"finishes", "--at", "64 F 55 %"}, usual()).out.find("oil-varnish"), std::string::npos);
  const std::string cold = run({"finishes", "--at", "2 C 55 %"}, usual()).out;
  EXPECT_NE(cold.find("No time for"), std::string::npos);
  EXPECT_EQ(cold.find("expected"), std::string::npos) << "no head over an empty table";
}

TEST(Run, FinishInAnAirThatIsBeyondIt) {
  const Outcome cold = run({"finishes", "water-clear", "--at", "8 C 50 %"}, usual());
  EXPECT_EQ(cold.status, no_plan);
  EXPECT_EQ(cold.out, "");
  EXPECT_NE(cold.err.find("'water-clear' may not go on at 8 °C, 50 % RH: 8 °C is below its limit of "), std::string::npos) << cold.err;
  EXPECT_NE(cold.err.find("; it goes on from "), std::string::npos) << cold.err;
  EXPECT_NE(cold.err.find(" above the dew point"), std::string::npos) << "a limit that damp air breaks before the humidity's own";
  EXPECT_EQ(run({"finishes", "water-clear", "--at", "18 C"}, usual()).err,
            "coatday: error: --at expected a temperature and a humidity, such as 23 °C 50 %, found '18 C'\n");
  EXPECT_EQ(run({"finishes", "--at", "18 C 50 %", "--format", "json"}, usual()).err,
            "coatday: error: --format json needs the NAME of a finish and an air --at\n");
}

TEST(Run, WoodInAnAir) {
  const Outcome json = run({"wood", "--at", "70 F 65 %", "--format", "json"}, usual());
  EXPECT_EQ(json.status, done) << json.err;
  EXPECT_NE(json.out.find("\"emc_percent\": 11.95"), std::string::npos) << json.out;  // table 4-2: 12.0
  const Outcome text = run({"wood", "--at", "70 F 65 %", "--units", "us"}, usual());
  EXPECT_TRUE(text.out.starts_with("wood at 70 °F, 65 % RH settles at 12.0 % of moisture\n")) << text.out;
}

TEST(Run, ABoardMoves) {
  const Args board{"wood", "--at", "70 F 65 %", "--species", "red-oak", "--width", "22 in", "--cut", "flat", "--from", "70 F 35 %"};
  const Outcome text = run(board, usual());
  EXPECT_EQ(text.status, done) << text.err;
  EXPECT_NE(text.out.find("grows by 10 mm to 569"), std::string::npos) << text.out;
  Args back = board;
  back[2] = "70 F 35 %";
  back[10] = "70 F 65 %";
  EXPECT_NE(run(back, usual()).out.find("shrinks by 10 mm"), std::string::npos);
  Args asked = board;
  asked.insert(asked.end(), {"--format", "json"});
  const std::string json = run(asked, usual()).out;
  for (const char* key : {"\"movement_mm\": 1", "\"width_mm\": 56", "\"coefficient_per_percent\": 0.00369", "\"from_emc_percent\": 6.9",
                          "\"to_emc_percent\": 11.95"})
    EXPECT_NE(json.find(key), std::string::npos) << key << json;
}

TEST(Run, AMovementThatIsNotKnownIsRefused) {
  const auto with = [](const Args& more) {
    Args words{"wood", "--at", "70 F 65 %"};
    words.insert(words.end(), more.begin(), more.end());
    return run(words, usual());
  };
  const Outcome dry = with({"--species", "red-oak", "--width", "22 in", "--cut", "flat", "--from", "70 F 20 %"});
  EXPECT_EQ(dry.status, no_plan);
  EXPECT_NE(dry.err.find("4.5 % of moisture is outside the 6 to 14 %"), std::string::npos) << dry.err;
  EXPECT_EQ(run({"wood", "--at", "70 F 98 %"}, usual()).status, no_plan);
  EXPECT_EQ(run({"wood"}, usual()).status, bad_input);
  EXPECT_EQ(run({"wood", "order.yaml", "--at", "70 F 50 %"}, usual()).status, bad_input);
  EXPECT_EQ(run({"wood", "--at", "70 F 50 %", "--from", "2027-01-11 08:00"}, usual()).status, bad_input);
  EXPECT_EQ(run({"wood", "--at", "-20 C 50 %"}, usual()).status, no_plan);
  EXPECT_EQ(with({"--cut", "flat", "--width", "22 in"}).err,
            "coatday: error: --width needs --species, --from beside it (coatday wood --help says more)\n");
  EXPECT_EQ(with({"--species", "walnt"}).err.find("coatday: error: --species unknown species 'walnt'; did you mean 'walnut'?"), 0U);
  EXPECT_EQ(with({"--cut", "rift"}).status, bad_input);
  EXPECT_EQ(with({"--cut", "95 deg"}).status, bad_input);
  EXPECT_EQ(with({"--width", "22"}).status, bad_input);
}

TEST(Run, UnknownFinishNamesTheNearest) {
  const Outcome outcome = run({"schedules", "water-claer-three-coats"}, usual());
  EXPECT_EQ(outcome.status, bad_input);
  EXPECT_NE(outcome.err.find("did you mean 'water-clear-three-coats'?"), std::string::npos) << outcome.err;
}

Environment two_orders() {
  return typed({{"birch.yaml", order("", "Birch Lane")}, {"mill.yaml", order("", "Mill Road")}, {"shop.yaml", shop}});
}

TEST(Run, SeveralOrdersInOnePlan) {
  const Outcome text = run({"plan", "birch.yaml", "mill.yaml"}, two_orders());
  EXPECT_EQ(text.status, done) << text.err;
  EXPECT_TRUE(text.out.starts_with("Birch Lane and Mill Road ")) << text.out;
  EXPECT_NE(text.out.find("Mill Road / shelf"), std::string::npos);
  const std::string json = run({"plan", "birch.yaml", "mill.yaml", "--format", "json"}, two_orders()).out;
  EXPECT_NE(json.find(R"("order":"Mill Road")"), std::string::npos);
  EXPECT_NE(json.find("mill-road-shelf/"), std::string::npos) << "both have the id 'shelf'";
  EXPECT_EQ(run({"plan", "order.yaml", "--format", "json"}, usual()).out.find(R"("order":)"), std::string::npos);
  for (const char* command : {"buy", "why", "check", "area"}) {
    const Outcome outcome = run({command, "birch.yaml", "mill.yaml"}, two_orders());
    EXPECT_EQ(outcome.status, done) << command << outcome.err;
    EXPECT_FALSE(outcome.out.empty()) << command;
  }
}

TEST(Run, ACalendarIsForTheFileOrTheStream) {
  EXPECT_TRUE(run({"calendar", "order.yaml"}, usual()).out.starts_with("BEGIN:VCALENDAR\r\n"));
  const Outcome file = run({"calendar", "order.yaml", "-o", testing::TempDir() + "coatday.ics"}, usual());
  ASSERT_TRUE(file.file);
  EXPECT_EQ(file.file->content, run({"calendar", "order.yaml"}, usual()).out);
  EXPECT_NE(file.out.find("coatday.ics: "), std::string::npos);
  EXPECT_EQ(run({"calendar", "order.yaml", "-o", "/no/such/folder/plan.ics"}, usual()).status, bad_input);
}

TEST(Run, NoPlanMakesNoCalendar) {
  std::string cold = shop;
  cold.replace(cold.find("20 °C"), std::string("20 °C").size(), "2 °C");
  const Outcome outcome =
      run({"calendar", "order.yaml", "-o", testing::TempDir() + "cold.ics"}, typed({{"order.yaml", order()}, {"shop.yaml", cold}}));
  EXPECT_EQ(outcome.status, no_plan);
  EXPECT_FALSE(outcome.file);
  EXPECT_EQ(outcome.out, "");
  EXPECT_NE(outcome.err.find("impossible"), std::string::npos) << outcome.err;
}

TEST(Run, PlansAnewBesideAnEarlierPlan) {
  Environment w = usual();
  const std::string earlier = run({"plan", "order.yaml", "--format", "json"}, w).out;
  w = typed({{"order.yaml", order()}, {"shop.yaml", shop}, {"old.json", earlier}, {"none.json", "{}"}});
  const Outcome again = run({"plan", "order.yaml", "--keep", "old.json"}, w);
  EXPECT_EQ(again.status, done) << again.err;
  EXPECT_NE(again.out.find("Moved  nothing"), std::string::npos) << again.out;
  EXPECT_NE(run({"plan", "order.yaml", "--keep", "old.json", "--format", "json"}, w).out.find("\"moved\": []"), std::string::npos);
  const Outcome later = run({"plan", "order.yaml", "--keep", "old.json", "--from", "2027-01-12 08:00"}, w);
  EXPECT_NE(later.out.find("against the earlier plan"), std::string::npos) << later.out;
  const Outcome wrong = run({"plan", "order.yaml", "--keep", "none.json"}, w);
  EXPECT_EQ(wrong.status, bad_input);
  EXPECT_EQ(wrong.err, "none.json: error: this is no plan; expected one as written by 'coatday plan --format json'\n");
  EXPECT_EQ(run({"plan", "order.yaml", "--keep", "nowhere.json"}, w).status, bad_input);
}

// Nights of 10 °C, in which the coats dry slowly.
Environment cold_nights() {
  std::string cold = shop;
  const std::string constant = "  constant: {temperature: 20 °C, humidity: 45 %}\n";
  cold.replace(cold.find(constant), constant.size(),
               "  timetable:\n    - {heated: 07:00-17:00 at 16 °C, otherwise: 10 °C, humidity: 50 %}\n");
  return typed({{"order.yaml", order()}, {"shop.yaml", cold}});
}

TEST(Run, WhatIfShowsBothPlans) {
  const Outcome outcome =
      run({"what-if", "order.yaml", "--set", "air.night=18 C", "--set", "pieces.shelf.parts.board.count=2"}, cold_nights());
  EXPECT_EQ(outcome.status, done) << outcome.err;
  golden::expect_golden("cli/golden/what-if.txt", outcome.out);
  EXPECT_NE(run({"what-if", "order.yaml", "--set", "people=1"}, usual()).out.find("as warm as before"), std::string::npos);
  const Outcome json = run({"what-if", "order.yaml", "--set", "air.night=18 C", "--format", "json"}, cold_nights());
  EXPECT_NE(json.out.find("\"warmer_k_h\""), std::string::npos) << json.out << json.err;
}

TEST(Run, WhatIfNamesThePlaceOfAMistake) {
  const Outcome outcome = run({"what-if", "order.yaml", "--set", "people=1", "--set", "air.nihgt=13 C"}, cold_nights());
  EXPECT_EQ(outcome.status, bad_input);
  EXPECT_TRUE(outcome.err.starts_with("--set:2:5: error: unknown key 'nihgt' in the air; did you mean 'night'?")) << outcome.err;
}

TEST(Run, WhatIfWithNothingSetSaysWhatHelpsMost) {
  const Outcome outcome = run({"what-if", "order.yaml"}, cold_nights());
  EXPECT_EQ(outcome.status, done) << outcome.err;
  golden::expect_golden("cli/golden/advice.txt", outcome.out);
  EXPECT_NE(run({"what-if", "order.yaml"}, usual()).out.find("Better air would hardly help"), std::string::npos);
  EXPECT_NE(run({"what-if", "order.yaml", "--format", "json"}, cold_nights()).out.find("coatday-advice/3"), std::string::npos);
}

TEST(Run, PlanSaysWhatHelpsWhereItWaitsForAir) {
  const std::string text = run({"plan", "order.yaml"}, cold_nights()).out;
  EXPECT_NE(text.find("What would be quicker"), std::string::npos) << text;
  EXPECT_NE(text.find("Caution  no flame, spark or glowing heater"), std::string::npos) << text;
  EXPECT_EQ(run({"plan", "order.yaml"}, usual()).out.find("What would be quicker"), std::string::npos);
  const Outcome json = run({"plan", "order.yaml", "--format", "json"}, cold_nights());
  EXPECT_NE(json.out.find("\"advice\": {\"tried\":true"), std::string::npos);
  EXPECT_NE(json.out.find("heat outside the heated hours, nights and days off"), std::string::npos);
}

TEST(Run, WhatWouldHelpIsSaidOnce) {
  Files files{{"order.yaml", order() + "promised: 2027-01-14\n"}, {"shop.yaml", shop}};
  std::string cold = shop;
  cold.replace(cold.find("20 °C"), std::string("20 °C").size(), "15 °C");
  files["shop.yaml"] = cold;
  const std::string late = run({"plan", "order.yaml"}, typed(files)).out;
  EXPECT_NE(late.find("What would make it in time, or earlier"), std::string::npos) << late;
  EXPECT_EQ(late.find("What would be quicker"), std::string::npos) << late;
}

TEST(Run, WhatIfOfAnImpossibleOrderSaysWhatWouldHelp) {
  std::string cold = shop;
  cold.replace(cold.find("20 °C"), std::string("20 °C").size(), "2 °C");
  const Environment impossible = typed({{"order.yaml", order()}, {"shop.yaml", cold}});
  const Outcome text = run({"what-if", "order.yaml"}, impossible);
  EXPECT_EQ(text.status, no_plan);
  EXPECT_NE(text.out.find("What would help"), std::string::npos) << text.out;
  const Outcome json = run({"what-if", "order.yaml", "--format", "json"}, impossible);
  EXPECT_EQ(json.status, no_plan);
  EXPECT_TRUE(json.out.starts_with("{\n  \"schema\": \"coatday-advice/3\"")) << json.out;
  EXPECT_NE(json.out.find("\"proposals\""), std::string::npos) << json.out;
  const Outcome set = run({"what-if", "order.yaml", "--set", "air.constant.temperature=2 °C"}, usual());
  EXPECT_NE(set.out.find("What would help"), std::string::npos) << set.out;
}

/// Whatever is set, it is planned or refused with its place.
TEST(Run, WhatIfSurvivesOddTexts) {
  std::string deep;
  for (int i = 0; i < 3000; ++i) deep += "air.";
  std::vector<std::string> odd{"",
                               "=",
                               "==",
                               ".=",
                               "...=1",
                               "air",
                               "air=",
                               "=13 C",
                               deep + "night=13 C",
                               deep,
                               "air.night=" + deep,
                               "päople=1",
                               "\xff\xfe=1",
                               "people=\xff",
                               std::string("peo\0ple=1", 10),
                               "people=1\nhours=2",
                               "people=99999999999999999999",
                               "people=-1",
                               "people=1e400",
                               "people=nan",
                               "people=[[[[[[[[[[",
                               "people={a: {b: ",
                               "people=*a",
                               "people=&a 1",
                               "people=!!int 1",
                               "pieces=1",
                               "pieces.0=1",
                               "pieces.2=1",
                               "pieces.2.parts=1",
                               "pieces.99999999999999999999.x=1",
                               "pieces.shelf.parts.board.count=1000000000",
                               "pieces.shelf.parts.board.length=1e300 m",
                               "pieces.shelf.parts.board.length=0 mm",
                               "air.constant={}",
                               "air.constant.temperature=-300 °C",
                               "hours={}",
                               "start=9999-12-31 23:59",
                               "\xf0\x9f\xaa\xb5.\xf0\x9f\xaa\xb5=\xf0\x9f\xaa\xb5"};
  const std::vector<std::string> heads{"air",     "pieces", "pieces.1", "pieces.shelf", "pieces.1.parts.1", "people", "hours", "start",
                                       "methods", "units",  "order",    "shop"};
  const std::vector<std::string> tails{"", ".", ".1", ".night", ".count", "..", " . ", ".\xc2\xa0"};
  const std::vector<std::string> values{"1", "~", "[]", "13 C", "\"", "2027-02-30", "- a"};
  for (std::size_t i = 0; i < heads.size(); ++i) {
    for (std::size_t j = 0; j < tails.size(); ++j) odd.push_back(heads[i] + tails[j] + "=" + values[(i + j) % values.size()]);
  }
  for (const std::string& text : odd) {
    const Outcome outcome = run({"what-if", "order.yaml", "--set", text}, usual());
    EXPECT_TRUE(outcome.status == done || outcome.status == no_plan || outcome.status == bad_input) << text.substr(0, 80) << outcome.err;
    EXPECT_EQ(outcome.err.empty(), outcome.status != bad_input) << text.substr(0, 80);
  }
}

TEST(Run, UnitsOfTheCommandLine) {
  EXPECT_NE(run({"area", "order.yaml"}, usual()).out.find("m²"), std::string::npos);
  EXPECT_NE(run({"area", "order.yaml", "--units", "us"}, usual()).out.find("ft²"), std::string::npos);
}

TEST(Run, ColourOnlyWhenAsked) {
  EXPECT_EQ(run({"plan", "order.yaml"}, usual()).out.find('\x1b'), std::string::npos);
  EXPECT_NE(run({"plan", "order.yaml", "--colour", "always"}, usual()).out.find('\x1b'), std::string::npos);
}

TEST(Run, HostileNamesAndWordsReachNoTerminal) {
  const Environment w = typed({{"order.yaml", order("", "a \\e[2J <script>")}, {"shop.yaml", shop}});
  for (const Outcome& outcome : {run({"plan", "order.yaml"}, w), run({"\x1b[2J"}, w), run({"plan", "\x1b]0;x\x07.yaml"}, w),
                                 run({"why", "order.yaml", "\x1b[2J"}, w), run({"finishes", "\x1b[2J"}, w)}) {
    EXPECT_EQ((outcome.out + outcome.err).find('\x1b'), std::string::npos) << outcome.out << outcome.err;
  }
}

}  // namespace
}  // namespace coatday::cli
