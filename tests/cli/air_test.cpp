// The shop's air as printed, and a room fitted to a logger's readings, without a process.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "cli/run.h"
#include "tests/cli/typed.h"
#include "tests/report/golden.h"

namespace coatday::cli {
namespace {

const std::string head = R"(shop: cold shop
time zone: America/Chicago
units: metric
currency: EUR
hours: {mon-fri: "08:00-12:00, 13:00-17:00"}
methods: [brush, pad, wipe]
drying places:
  - {name: trestle, kind: points, count: 4}
)";
const std::string room = R"(air:
  outdoors: chicago.csv
  time constant: 12 h
  timetable:
    - {days: mon-fri, heated: 07:00-17:00 at 20 °C}
  heater: {lifts: 60 K, power: 12 kW}
  energy price: 0.15
  volume: 150 m3
  air changes: 0.4
  moisture gain: 250 g/h
)";
const std::string order = R"(order: shelf
shop: shop.yaml
start: 2027-01-11 08:00
pieces:
  - piece: shelf
    species: walnut-black
    schedule: water-clear-three-coats
    parts:
      - {part: board, shape: board, length: 900 mm, width: 250 mm, thickness: 20 mm}
)";

Environment environment(Files files) {
  files.insert({{"shop.yaml", head + room}, {"order.yaml", order}});
  return typed(std::move(files));
}

const std::vector<std::string> january{"--from", "2027-01-11 08:00", "--days", "4"};

Outcome air(std::vector<std::string> words, const Files& files = {}) {
  words.insert(words.begin(), {"air", "shop.yaml"});
  words.insert(words.end(), january.begin(), january.end());
  return run(words, environment(files));
}

TEST(Air, DayByDayAtEightyColumns) {
  const Outcome outcome = air({"order.yaml"});
  EXPECT_EQ(outcome.status, done) << outcome.err;
  golden::expect_golden("cli/golden/air.txt", outcome.out);
}

TEST(Air, HalfHourRowsForPrograms) {
  const Outcome csv = air({"--finish", "water-clear", "--format", "csv"});
  EXPECT_TRUE(csv.out.starts_with("time,t_c,rh_pct,dew_point_c,source,working,water-clear\n2027-01-11T00:00:00-06:00,")) << csv.err;
  EXPECT_EQ(std::count(csv.out.begin(), csv.out.end(), '\n'), 1 + 4 * 48);
  const Outcome json = air({"--finish", "water-clear", "--format", "json"});
  for (const char* part : {"\"coatday-air/1\"", "\"may_go_on\"", "\"heater_h\"", "\"condensed_kg\"", "\"open_c\""})
    EXPECT_NE(json.out.find(part), std::string::npos) << part << json.err;
}

TEST(Air, SaysHowToNameAFinishWhereNoneIsInUse) {
  EXPECT_NE(air({}).out.find("--finish water-clear"), std::string::npos);
  const std::string stocked = head + room + "stock: [{product: shellac, volume: 1 l}]\n";
  EXPECT_NE(air({}, {{"shop.yaml", stocked}}).out.find("shellac"), std::string::npos) << air({}, {{"shop.yaml", stocked}}).err;
  const Outcome slip = air({"--finish", "water-claer"});
  EXPECT_EQ(slip.status, bad_input);
  EXPECT_NE(slip.err.find("did you mean 'water-clear'?"), std::string::npos) << slip.err;
}

TEST(Air, TakesKeysOfTheShop) {
  EXPECT_NE(air({"--set", "air.night=18 C"}).out, air({}).out);
  EXPECT_NE(air({"--set", "pieces.shelf.count=2"}).err.find("unknown key 'pieces'"), std::string::npos);
}

TEST(Air, MistakesOfTheCommandLine) {
  EXPECT_EQ(run({"air"}, environment({})).status, bad_input);
  EXPECT_NE(run({"air", "shop.yaml", "--days", "0"}, environment({})).err.find("from 1 to 366"), std::string::npos);
  EXPECT_NE(run({"air", "shop.yaml", "--format", "yaml"}, environment({})).err.find("expected text, json or csv"), std::string::npos);
  EXPECT_EQ(run({"air", "nowhere.yaml"}, environment({})).status, bad_input);
  EXPECT_NE(run({"plan", "order.yaml", "--format", "csv"}, environment({})).err.find("expected text or json"), std::string::npos);
}

TEST(Air, AnOrderOfAnotherShopIsAMistake) {
  const Files files{{"other.yaml", head + room}};
  const Outcome outcome = run({"air", "other.yaml", "order.yaml"}, environment(files));
  EXPECT_EQ(outcome.status, bad_input);
  EXPECT_NE(outcome.err.find("order.yaml:2:7: error: the order names another shop file than the one that is asked for, 'other.yaml'"),
            std::string::npos)
      << outcome.err;
  EXPECT_EQ(run({"air", "shop.yaml", "order.yaml"}, environment(files)).status, done);
}

TEST(Air, DaysOfSummerTime) {
  const Outcome outcome =
      run({"air", "shop.yaml", "--finish", "water-clear", "--from", "2027-03-13 08:00", "--days", "3"}, environment({}));
  EXPECT_EQ(outcome.status, done) << outcome.err;
  const Outcome csv = run({"air", "shop.yaml", "--from", "2027-03-13 08:00", "--days", "3", "--format", "csv"}, environment({}));
  EXPECT_EQ(std::count(csv.out.begin(), csv.out.end(), '\n'), 1 + 3 * 48 - 2);
}

TEST(WhatIf, HeatHasAPriceWhereTheShopTellsIt) {
  const Outcome outcome = run({"what-if", "order.yaml", "--set", "air.night=16 C"}, environment({}));
  EXPECT_EQ(outcome.status, done) << outcome.err;
  EXPECT_NE(outcome.out.find("kWh in place of"), std::string::npos) << outcome.out;
  EXPECT_NE(outcome.out.find("EUR more"), std::string::npos) << outcome.out;
  const Outcome json = run({"what-if", "order.yaml", "--set", "air.night=16 C", "--format", "json"}, environment({}));
  EXPECT_NE(json.out.find("\"energy_kwh\""), std::string::npos) << json.out;
}

/// Two days of a room that falls towards 0 °C with 10 h in its nights.
std::string night_log() {
  std::string text = "time,t_C,rh_pct\n";
  double t = 20;
  for (int quarter = 0; quarter < 192; ++quarter) {
    const int hour = quarter / 4 % 24;
    const bool heated = hour >= 7 && hour < 17;
    t = heated ? 20 : t * std::exp(-0.25 / 10);
    text += "2027-01-" + std::to_string(11 + quarter / 96) + " " + (hour < 10 ? "0" : "") + std::to_string(hour) + ":" +
            (quarter % 4 == 0 ? "00" : std::to_string(quarter % 4 * 15)) + "," + std::to_string(t) + "," + std::to_string(60 - t) + "\n";
  }
  return text;
}

std::string without_outdoors() {
  return head + "air:\n  timetable:\n    - {heated: 07:00-17:00 at 20 °C, otherwise: 0 °C, humidity: 40 %}\n";
}

TEST(AirFit, ReadsTheShopOnce) {
  Environment counting = environment({{"log.csv", night_log()}, {"shop.yaml", without_outdoors()}});
  int shops = 0;
  counting.read = [&shops, read = counting.read](const std::filesystem::path& path) {
    shops += path.filename() == "shop.yaml" ? 1 : 0;
    return read(path);
  };
  EXPECT_EQ(run({"air", "shop.yaml", "--fit", "log.csv"}, counting).status, done);
  EXPECT_EQ(shops, 1);
}

TEST(AirFit, ReadsTheRoomOutOfALog) {
  const Files files{{"log.csv", night_log()}, {"shop.yaml", without_outdoors()}};
  const Outcome outcome = run({"air", "shop.yaml", "--fit", "log.csv"}, environment(files));
  EXPECT_EQ(outcome.status, done) << outcome.err;
  golden::expect_golden("cli/golden/air-fit.txt", outcome.out);
  const Outcome csv = run({"air", "shop.yaml", "--fit", "log.csv", "--format", "csv"}, environment(files));
  EXPECT_TRUE(csv.out.starts_with("time,measured_c,modelled_c,outdoors_c,measured_rh_pct,modelled_rh_pct\n")) << csv.out;
  EXPECT_EQ(std::count(csv.out.begin(), csv.out.end(), '\n'), 1 + 192);
  const Outcome json = run({"air", "shop.yaml", "--fit", "log.csv", "--format", "json"}, environment(files));
  EXPECT_NE(json.out.find("\"coatday-fit/1\""), std::string::npos) << json.out;
}

TEST(AirFit, ReadsAsTheShopSaysThatItsLoggerWrites) {
  std::string odd = night_log();
  odd.replace(0, odd.find('\n'), "when,bench,damp");
  const std::string told = without_outdoors() + "  log: {file: log.csv, time: when, temperature: bench, unit: C, humidity: damp}\n";
  const auto fit = [](const std::string& shop, const std::string& log) {
    return run({"air", "shop.yaml", "--fit", "fit.csv"}, environment({{"log.csv", log}, {"fit.csv", log}, {"shop.yaml", shop}}));
  };
  EXPECT_EQ(fit(without_outdoors(), odd).status, bad_input);
  const Outcome outcome = fit(told, odd);
  EXPECT_EQ(outcome.status, done) << outcome.err;
  EXPECT_EQ(outcome.out, fit(without_outdoors(), night_log()).out);
}

TEST(AirFit, NothingIsMinusZero) {
  const std::string out =
      run({"air", "shop.yaml", "--fit", "log.csv"}, environment({{"log.csv", night_log()}, {"shop.yaml", without_outdoors()}})).out;
  for (const char* zero : {"-0 ", "-0.00 ", "-0.0 "}) EXPECT_EQ(out.find(zero), std::string::npos) << out;
}

TEST(AirFit, MistakesAndRefusals) {
  const Files files{{"log.csv", night_log()}, {"short.csv", night_log().substr(0, 300)}, {"none.csv", "a,b\n1,2\n"}};
  EXPECT_EQ(run({"air", "shop.yaml", "--fit", "nowhere.csv"}, environment(files)).status, bad_input);
  const Outcome none = run({"air", "shop.yaml", "--fit", "none.csv"}, environment(files));
  EXPECT_EQ(none.status, bad_input);
  EXPECT_NE(none.err.find("none.csv: error: none of"), std::string::npos) << none.err;
  EXPECT_EQ(run({"air", "shop.yaml", "order.yaml", "--fit", "log.csv"}, environment(files)).status, bad_input);
  const Outcome small = run({"air", "shop.yaml", "--fit", "short.csv"}, environment(files));
  EXPECT_EQ(small.status, no_plan) << small.err;
  EXPECT_NE(small.out.find("not known: nowhere in the log"), std::string::npos) << small.out;
}

}  // namespace
}  // namespace coatday::cli
