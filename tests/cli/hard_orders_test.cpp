// Orders that were once refused by the program's own check, or falsely by its search. Each test names the cause.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "cli/run.h"
#include "tests/cli/typed.h"

namespace coatday::cli {
namespace {

const std::string steady = "air: {constant: {temperature: 20 °C, humidity: 45 %}}\n";

std::string shop(const std::string& more, const std::string& hours = "{mon-fri: \"08:00-12:00, 13:00-17:00\"}") {
  return "shop: hard cases\ntime zone: America/Chicago\nmethods: [brush, wipe]\nhours: " + hours + "\n" + more;
}
const std::string places = "drying places: [{name: trestles, kind: points, count: 4}, {name: rail, kind: hooks, count: 6}]\n";

std::string order(const std::string& head, const std::string& part, const std::string& more = "") {
  return "shop: shop.yaml\n" + head + "\npieces:\n  - piece: p\n    parts: [{part: top, " + part + "}]\n" + more;
}
const std::string board = "shape: board, length: 1 m, width: 30 cm, thickness: 2 cm";
const std::string clear = "order: t\nstart: 2027-03-01 08:00\nschedule: water-clear-three-coats\nspecies: walnut";

Outcome plan(const std::string& orders, const std::string& shops, std::vector<std::string> words = {}, Files more = {}) {
  more.insert({{"order.yaml", orders}, {"shop.yaml", shops}});
  words.insert(words.begin(), {"plan", "order.yaml"});
  return run(words, typed(std::move(more)));
}

bool says(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

/// What was done, step by step, of p/top.
std::string history(const std::vector<std::array<const char*, 3>>& steps) {
  std::string text = "history:\n";
  for (const auto& [step, from, until] : steps) {
    text += std::string("  - {event: p/top/") + step + ", start: 2027-03-" + from + ", end: 2027-03-" + until + "}\n";
  }
  return text;
}

const std::string all_done = history({{"sand-to-150", "01 08:00", "01 08:15"},
                                      {"raise-the-grain/first", "01 09:00", "01 09:05"},
                                      {"raise-the-grain/second", "01 10:20", "01 10:25"},
                                      {"cut-back", "02 08:00", "02 08:10"},
                                      {"clear-1/first", "02 08:50", "02 09:15"},
                                      {"clear-1/second", "02 10:30", "02 10:55"},
                                      {"scuff-1", "02 15:10", "02 15:20"},
                                      {"clear-2/first", "02 16:00", "02 16:25"},
                                      {"clear-2/second", "03 08:10", "03 08:35"},
                                      {"scuff-2", "03 13:00", "03 13:05"},
                                      {"clear-3/first", "03 13:40", "03 14:05"},
                                      {"clear-3/second", "03 15:20", "03 15:45"}});

TEST(HardOrders, AFinishedPieceHasItsDateInThePast) {
  const std::string q = "  - piece: q\n    parts: [{part: top, " + board + "}]\n";
  const Files files{{"order.yaml", order(clear, board, q + all_done)}, {"shop.yaml", shop(places + steady)}};
  for (const char* command : {"plan", "card", "quote", "sheet", "calendar", "why", "buy"}) {
    const Outcome outcome = run({command, "order.yaml", "--from", "2027-03-09 08:00"}, typed(files));
    EXPECT_EQ(outcome.status, done) << command << outcome.err;
  }
  const Outcome outcome = run({"plan", "order.yaml", "--from", "2027-03-09 08:00", "--format", "json"}, typed(files));
  const auto json = nlohmann::json::parse(outcome.out);
  EXPECT_TRUE(json.at("pieces")[0].at("ready_safe").at("deliver").get<std::string>().starts_with("2027-03-08T08:00"));
}

TEST(HardOrders, AllIsDoneIsSaidOnEveryPaper) {
  const Files files{{"order.yaml", order(clear, board, all_done)}, {"shop.yaml", shop(places + steady)}};
  for (const char* command : {"plan", "card", "quote", "sheet", "calendar", "why", "buy"}) {
    const Outcome outcome = run({command, "order.yaml", "--from", "2027-03-09 08:00"}, typed(files));
    EXPECT_EQ(outcome.status, done) << command << outcome.err;
    EXPECT_FALSE(outcome.out.empty()) << command;
  }
  const Outcome sheet = run({"sheet", "order.yaml", "--from", "2027-03-09 08:00"}, typed(files));
  EXPECT_TRUE(says(sheet.out, "Nothing is left to do: all of it is done.")) << sheet.out;
}

TEST(HardOrders, AFinishedPieceMayStillBeDelivered) {
  const std::string delivery = "    work: [{name: delivery, when: delivery, takes: 1 h}]\n";
  for (const char* from : {"2027-03-04 08:00", "2027-03-11 08:00", "2027-06-11 08:00"}) {
    EXPECT_EQ(plan(order(clear, board, delivery + all_done), shop(places + steady), {"--from", from}).status, done) << from;
  }
}

TEST(HardOrders, FixedWorkAtAnOddMinuteStaysThere) {
  for (const char* may_pause : {"no", "yes"}) {
    const std::string call =
        "work: [{name: phone call, takes: 30 min, start: 2027-03-02 10:07, may pause: " + std::string(may_pause) + "}]\n";
    const Outcome outcome = plan(order(clear, board), shop(places + steady + call));
    EXPECT_EQ(outcome.status, done) << outcome.err;
    EXPECT_TRUE(says(outcome.out, "10:07")) << outcome.out;
  }
}

TEST(HardOrders, LimitsAreRoundedDown) {
  const auto tight = [](const std::string& within) {
    return "schedules:\n  tight:\n    name: t\n    suits: wood\n    steps:\n      - {step: sand, kind: prepare, takes: 4 h}\n"
           "      - {step: again, kind: scuff, takes: 4 h, within: " +
           within + "}\n";
  };
  const std::string own = "order: t\nstart: 2027-03-01 08:00\nschedule: tight\nspecies: walnut\nown finishes: [tight.yaml]";
  const std::string quick = shop(places + steady + "turning: 0 min\nhandling: 0 min\n");
  for (const char* within : {"57 min", "59 min"}) {
    EXPECT_EQ(plan(order(own, board), quick, {}, {{"tight.yaml", tight(within)}}).status, no_plan) << within;
  }
  EXPECT_EQ(plan(order(own, board), quick, {}, {{"tight.yaml", tight("60 min")}}).status, done);
  for (const char* within : {"903 min", "1442 min", "67 min"}) {
    const Outcome outcome = plan(order(clear, board), shop(places + steady + "both faces within: " + within + "\n"));
    EXPECT_TRUE(outcome.status == done || outcome.status == no_plan) << within << outcome.err;
  }
}

TEST(HardOrders, WorkThatMayPauseEndsWithinItsWindow) {
  const auto work = [](const std::string& last) {
    return "work: [{name: a, takes: 10 h, not before: 2027-03-01, not after: " + last + ", may pause: yes}]\n";
  };
  const Outcome one_day = plan(order(clear, board), shop(places + steady + work("2027-03-01")));
  EXPECT_EQ(one_day.status, no_plan);
  EXPECT_TRUE(says(one_day.out, "a needs 10 h within working hours")) << one_day.out;
  EXPECT_EQ(plan(order(clear, board), shop(places + steady + work("2027-03-02"))).status, done);
}

TEST(HardOrders, AProductWithoutAHoldIsNotHeldWarm) {
  const std::string mine = R"({"products": {"mine": {"like": "shellac", "limits": {"coldest": "44 °F"}}},
    "schedules": {"mine-sched": {"name": "m", "suits": "wood", "steps": [
      {"step": "coat 1", "kind": "topcoat", "product": "mine", "wet film": "135 um"}]}}})";
  const std::string cold = shop("drying places: [{name: any, kind: points}]\nair: {outdoors: seattle.csv, time constant: 2.1 h}\n",
                                "{mon-sun: \"00:30-03:30\"}");
  const std::string round = "order: one\nspecies: red-oak\nschedule: mine-sched\nown finishes: [mine.yaml]";
  const Outcome outcome = plan(order(round, "shape: round top, diameter: 0.62 m, thickness: 22 mm"), cold, {"--from", "2027-01-04 00:00"},
                               {{"mine.yaml", mine}});
  EXPECT_EQ(outcome.status, done) << outcome.err;
}

TEST(HardOrders, MeasuredWoodIsCoatedOnlyWhileItIsAtRest) {
  const std::string unheated = shop(places + "air: {outdoors: chicago.csv, time constant: 30 h}\n");
  for (const char* moisture : {"7 %", "9 %", "12 %", "16 %"}) {
    for (const char* start : {"2027-01-11 08:00", "2027-05-03 08:00", "2027-09-06 08:00"}) {
      const std::string head =
          std::string("order: t\nstart: ") + start + "\nmoisture: " + moisture + "\nschedule: oil-varnish-three-coats\nspecies: walnut";
      const Outcome outcome = plan(order(head, board), unheated);
      EXPECT_EQ(outcome.status, done) << moisture << start << outcome.err;
    }
  }
}

TEST(HardOrders, SlowSteelSettlesBeforeThePlanBegins) {
  const std::string heated =
      shop(places + "air: {outdoors: chicago.csv, time constant: 5 h, timetable: [{heated: \"07:00-18:00 at 22 °C\"}]}\n");
  for (const char* size : {"60 mm", "100 mm", "150 mm"}) {
    const std::string tube = std::string("shape: rect tube, length: 1 m, width: ") + size + ", height: " + size;
    const std::string head = "order: t\nstart: 2027-02-08 08:00\nschedule: metal-enamel\nmaterial: steel";
    const Outcome outcome = plan(order(head, tube), heated);
    EXPECT_EQ(outcome.status, done) << size << outcome.err;
  }
}

TEST(HardOrders, APlanMayBeLong) {
  const std::string wait = "    work: [{name: deliver, when: delivery, takes: 1 h, not before: 2027-09-15}]\n";
  EXPECT_EQ(plan(order(clear, board, wait), shop(places + steady)).status, done);
  const std::string rest = "    work: [{name: glue, when: before finishing, takes: 1 h, rest: 300 days}]\n";
  EXPECT_EQ(plan(order(clear, board, rest), shop(places + steady)).status, done);
  const std::string other = "work: [{name: mill, takes: 4000 h, may pause: yes}]\n";
  EXPECT_EQ(plan(order(clear, board), shop(places + steady + other)).status, done);
  const std::string late = "order: u\nstart: 2027-10-15 08:00\nschedule: water-clear-three-coats\nspecies: walnut";
  EXPECT_EQ(plan(order(clear, board), shop(places + steady), {"late.yaml"}, {{"late.yaml", order(late, board)}}).status, done);
}

TEST(HardOrders, AFullShopWaitsForItsPlaces) {
  const std::string weekend = shop("drying places: [{name: trestles, kind: points, count: 1, length: 1200 mm, width: 400 mm}]\n" + steady +
                                       "both faces within: 14 days\n",
                                   "{sat: \"09:00-13:00\"}");
  const std::string head = "order: t\nstart: 2027-03-06 08:00\nschedule: oil-varnish-three-coats\nspecies: walnut";
  const Outcome outcome = plan(order(head, board + ", count: 12"), weekend);
  EXPECT_EQ(outcome.status, done) << outcome.out;
}

TEST(HardOrders, LoadsThatNoShiftCanTurnAreSplit) {
  const std::string racks = shop(
      "drying places: [{name: rack, kind: rack, count: 40, length: 1 m, width: 50 cm}, "
      "{name: trestles, kind: points, count: 40, length: 1 m, width: 50 cm}]\n" +
      steady);
  EXPECT_EQ(plan(order(clear, "shape: board, length: 30 cm, width: 6 cm, thickness: 2 cm, count: 100"), racks).status, done);
}

TEST(HardOrders, LaidPartsAreNamedAsTheCauseWithWhatHelps) {
  const std::string racks = shop(
      "drying places: [{name: trestles, kind: points, count: 4, length: 2400 mm, width: 1200 mm}, "
      "{name: rack, kind: rack, count: 4, length: 1200 mm, width: 600 mm}]\n"
      "air: {outdoors: chicago.csv, time constant: 30 h, timetable: [{heated: 06:30-17:30 at 20 °C, "
      "otherwise: 15 °C}]}\n");
  const std::string head = "order: t\nstart: 2027-11-16 08:00\nschedule: oil-varnish-three-coats\nspecies: cherry-black";
  const std::string door = "shape: door, width: 380 mm, height: 900 mm, thickness: 19 mm, frame: 60 mm, recess: 6 mm, count: 3, support: ";
  const Outcome laid = plan(order(head, door + "laid"), racks);
  EXPECT_EQ(laid.status, no_plan);
  EXPECT_TRUE(says(laid.out, "(support: laid)")) << laid.out;
  EXPECT_TRUE(says(laid.out, "(support: points): turned when tack-free: ready ")) << laid.out;
  const Outcome points = plan(order(head, door + "points"), racks);
  EXPECT_EQ(points.status, done);
  // "  deliver   Mon 20 Dec 16:15, safe to promise"
  const std::size_t at = points.out.find("deliver   ") + std::string("deliver   ").size();
  const std::string date = points.out.substr(at, points.out.find(", safe to promise") - at);
  const Files files{{"order.yaml", order(head, door + "laid")}, {"shop.yaml", racks}};
  const Outcome changed = run({"what-if", "order.yaml", "--set", "pieces.p.parts.top.support=points"}, typed(files));
  EXPECT_TRUE(says(changed.out, "no plan") && says(changed.out, date)) << date << "\n" << changed.out;
}

TEST(HardOrders, PartsStandAsideWhenDryToHandle) {
  const std::string racks =
      shop("drying places: [{name: rack, kind: rack, count: 6, length: 950 mm, width: 300 mm}]\n" + steady, "{mon-fri: 08:00-17:00}");
  const std::string head = "order: t\nstart: 2027-03-01 08:00\nschedule: painted-cabinet\nspecies: poplar";
  const std::string shelves = "shape: board, length: 850 mm, width: 260 mm, thickness: 20 mm, count: 24, support: laid";
  const Outcome outcome = plan(order(head, shelves), racks, {"--format", "json"});
  ASSERT_EQ(outcome.status, done);
  const auto ready = nlohmann::json::parse(outcome.out).at("pieces")[0].at("ready_safe").at("deliver").get<std::string>();
  EXPECT_LE(ready, "2027-04-13T08:00:00-05:00");
}

std::string eight_racks(const std::string& more) {
  return shop("drying places: [{name: rack, kind: rack, count: 8, length: 950 mm, width: 300 mm}]\n" + steady + more,
              "{mon-fri: 08:00-17:00}");
}
std::string laid_shelves(int count) {
  return order("order: t\nstart: 2027-03-01 08:00\nschedule: painted-cabinet\nspecies: poplar",
               "shape: board, length: 850 mm, width: 260 mm, thickness: 20 mm, support: laid, count: " + std::to_string(count));
}

/// Thirty laid shelves on eight racks, painted; `more` is what the shop says of setting aside.
nlohmann::json thirty_shelves(const std::string& more) {
  const Outcome outcome = plan(laid_shelves(30), eight_racks(more), {"--format", "json"});
  EXPECT_EQ(outcome.status, done) << outcome.out << outcome.err;
  return nlohmann::json::parse(outcome.out);
}

std::string safe_day(const nlohmann::json& plan) {
  return plan.at("pieces")[0].at("ready_safe").at("deliver").get<std::string>().substr(0, 10);
}

/// The most parts that stand aside at a time.
int most_aside(const nlohmann::json& plan) {
  std::map<std::string, int> changes;  // all of one shop, and no change of the clock makes a text come before an earlier one
  for (const auto& place : plan.at("places")) {
    if (!place.contains("then")) continue;
    changes[place.at("then").at("aside_from").get<std::string>().substr(0, 16)] += place.at("parts").get<int>();
    changes[place.at("then").at("until").get<std::string>().substr(0, 16)] -= place.at("parts").get<int>();
  }
  int now = 0, most = 0;
  for (const auto& [at, change] : changes) most = std::max(most, now += change);
  return most;
}

TEST(HardOrders, RoomToStandAsideIsKept) {
  const auto enough = thirty_shelves(""), none = thirty_shelves("set aside: {parts: 0}\n"),
             some = thirty_shelves("set aside: {parts: 12}\n");
  EXPECT_GT(most_aside(enough), 12);
  EXPECT_EQ(most_aside(none), 0);
  EXPECT_GT(most_aside(some), 0);
  EXPECT_LE(most_aside(some), 12);
  EXPECT_LE(safe_day(enough), safe_day(some));
  EXPECT_LE(safe_day(some), safe_day(none));
  EXPECT_LT(safe_day(enough), safe_day(none));
  for (const auto& finding : some.at("warnings")) EXPECT_NE(finding.at("code"), "set-aside-full");
}

/// Whole weeks pass for a rack. Each time the days say so, and name what lies there.
TEST(HardOrders, DaysWithoutWorkNameTheRackThatIsTaken) {
  std::string text = plan(laid_shelves(20), eight_racks("set aside: {parts: 0}\n")).out;
  std::size_t broken = 0;
  while ((broken = text.find("\n   ", broken)) != std::string::npos)
    text.replace(broken, text.find_first_not_of("\n ", broken) - broken, " ");
  int named = 0;
  for (std::size_t at = 0; (at = text.find("no rack free: top ", at)) != std::string::npos; ++at) ++named;
  EXPECT_GE(named, 3) << text;
  EXPECT_EQ(text.find("waits for the air"), std::string::npos);
}

const std::string one_coat = history({{"sand-to-150", "01 08:00", "01 08:15"},
                                      {"raise-the-grain/first", "01 09:00", "01 09:05"},
                                      {"raise-the-grain/second", "01 10:20", "01 10:25"}});

/// The steps that are still to do, by their ids.
std::vector<std::string> to_do(const std::string& orders, const std::string& step) {
  const Outcome outcome = plan(orders, shop(places + steady), {"--from", "2027-03-02 08:00", "--format", "json"});
  EXPECT_EQ(outcome.status, done) << outcome.err;
  std::vector<std::string> ids;
  const auto json = nlohmann::json::parse(outcome.out);
  for (const auto& event : json.at("events")) {
    const auto id = event.at("id").get<std::string>();
    if (!event.value("done", false) && id.ends_with(step)) ids.push_back(id);
  }
  return ids;
}

TEST(HardOrders, APartThatIsAddedLaterStartsRaw) {
  const std::string added =
      clear + "\npieces:\n  - piece: p\n    parts:\n      - {part: top, " + board + "}\n      - {part: tray, " + board + "}\n";
  EXPECT_EQ(to_do("shop: shop.yaml\n" + added + one_coat, "/sand-to-150"), std::vector<std::string>{"p/tray/sand-to-150"});
  EXPECT_EQ(to_do(order(clear, board + ", count: 3", one_coat), "/sand-to-150"), std::vector<std::string>{"p/top.2-3/sand-to-150"});
}

TEST(HardOrders, WhatWasDoneTooEarlyOrTooLateIsTold) {
  const std::string early = history({{"sand-to-150", "01 08:00", "01 08:15"},
                                     {"raise-the-grain/first", "01 09:00", "01 09:05"},
                                     {"raise-the-grain/second", "01 10:20", "01 10:25"},
                                     {"cut-back", "02 08:00", "02 08:10"},
                                     {"clear-1/first", "02 08:50", "02 09:15"},
                                     {"clear-1/second", "04 09:30", "04 09:55"},
                                     {"scuff-1", "04 10:10", "04 10:20"}});
  const Outcome outcome = plan(order(clear, board, early), shop(places + steady), {"--from", "2027-03-05 08:00"});
  EXPECT_EQ(outcome.status, done) << outcome.err;
  EXPECT_TRUE(says(outcome.out, "dry to sand only at")) << outcome.out;
  EXPECT_TRUE(says(outcome.out, "too late: both faces of top get")) << outcome.out;
}

TEST(HardOrders, AFinishThatNothingMayLieUnderGoesOverItself) {
  const std::string mine = R"({"products": {"mine": {"like": "shellac"}},
    "schedules": {"two": {"name": "m", "suits": "wood", "steps": [
      {"step": "coat 1", "kind": "topcoat", "product": "mine"}, {"step": "coat 2", "kind": "topcoat", "product": "mine"}]}},
    "over": [{"upper": "mine", "under": "any", "verdict": "barrier", "barriers": ["shellac"], "source": "invented"}]})";
  const std::string head = "order: t\nstart: 2027-03-01 08:00\nschedule: two\nspecies: cherry-black\nown finishes: [mine.yaml]";
  const Outcome outcome = plan(order(head, board), shop(places + steady), {}, {{"mine.yaml", mine}});
  EXPECT_EQ(outcome.status, done) << outcome.err;
}

TEST(HardOrders, CoatsShareASetUpWithinAnOddGap) {
  const std::string parts = R"(
      - {part: rail, shape: case, width: 1.064 m, height: 12 5/16 in, depth: 0.289 m, thickness: 9 mm}
      - {part: long, shape: board, length: 1435 mm, width: 261 mm, thickness: 15 mm}
      - {part: door, shape: board, length: 1991 mm, width: 865 mm, thickness: 18 mm, support: hooks}
)";
  const std::string chest =
      "shop: shop.yaml\norder: t\nschedule: water-clear-three-coats\nspecies: red-oak\npieces:\n  - piece: chest\n    parts:" + parts;
  const std::string two =
      shop("people: 2\nsharing gap: 16 min\ndrying places: [{name: shelves, kind: points}, {name: rail, kind: hooks}]\n" + steady,
           "{mon-fri: 08:00-17:00}");
  const Outcome outcome = plan(chest, two, {"--from", "2033-12-23 17:29"});
  EXPECT_EQ(outcome.status, done) << outcome.err;
}

TEST(HardOrders, WhatIsDoneButDriesIsNotFinishedYet) {
  const Outcome drying = plan(order(clear, board, all_done), shop(places + steady), {"--from", "2027-03-04 08:00"});
  EXPECT_TRUE(says(drying.out, "all is done, and it dries; Mon 8 Mar 08:00, safe to promise")) << drying.out;
  const Outcome finished = plan(order(clear, board, all_done), shop(places + steady), {"--from", "2027-03-09 08:00"});
  EXPECT_TRUE(says(finished.out, "finished; may be delivered since Mon 8 Mar 08:00")) << finished.out;
}

TEST(HardOrders, AFirstSideThatWasTurnedWetIsTold) {
  const std::string wet = history({{"sand-to-150", "01 08:00", "01 08:15"},
                                   {"raise-the-grain/first", "01 09:00", "01 09:05"},
                                   {"raise-the-grain/second", "01 09:10", "01 09:15"}});
  const auto told = [](const std::string& done_so_far) {
    const Outcome outcome =
        plan(order(clear, board, done_so_far), shop(places + steady), {"--from", "2027-03-02 08:00", "--format", "json"});
    EXPECT_EQ(outcome.status, done) << outcome.err;
    return says(outcome.out, "but the first side was tack-free only at");
  };
  EXPECT_TRUE(told(wet));
  EXPECT_FALSE(told(one_coat));
}

TEST(HardOrders, NoOtherFinishIsAdvisedForWhatIsCoated) {
  const std::string head = "order: t\nstart: 2027-03-01 08:00\nschedule: oil-varnish-three-coats\nspecies: walnut";
  const std::string sanded = history({{"sand-to-150", "01 08:00", "01 08:15"}});
  const auto told = [&](const std::string& done_so_far) {
    const Outcome outcome = plan(order(head, board, done_so_far), shop(places + steady), {"--format", "json"});
    EXPECT_EQ(outcome.status, done) << outcome.err;
    return says(outcome.out, "in place of oil varnish");
  };
  EXPECT_TRUE(told(""));
  EXPECT_FALSE(told(sanded));
}

/// The scuff for a missed window, and the rubbing of the faces that show, are both there before the wax.
TEST(HardOrders, OneThingAtATimeIsDoneToALoad) {
  const std::string two = R"(shop: shop.yaml
order: t
pieces:
  - piece: board
    schedule: oil-varnish-rubbed
    species: hard-maple
    parts:
      - {part: rail, shape: door, width: 296 mm, height: 1021 mm, thickness: 14 mm, frame: 6 cm, recess: 3 mm}
      - {part: cup, shape: vessel, wall: 3 mm, profile: [{at: 0 mm, diameter: 90 mm}, {at: 139 mm, diameter: 173 mm}]}
)";
  for (const char* people : {"people: 2\n", "people: 3\n"}) {
    const std::string one_place = std::string("drying places: [{name: wall, kind: points}]\nfinishes kept at: 2 °C\n") + people +
                                  "air: {constant: {temperature: 78 °F, humidity: 51 %}}\n";
    const Outcome outcome = plan(two, shop(one_place, "{mon-fri: \"08:00-17:00\"}"), {"--from", "2026-07-09 16:05"});
    EXPECT_EQ(outcome.status, done) << people << outcome.err;
  }
}

TEST(HardOrders, ThinWoodChangesWithinMinutes) {
  const std::string mine = R"({"schedules": {"one": {"name": "m", "suits": "wood", "steps": [
    {"step": "coat 1", "kind": "topcoat", "product": "oil-varnish"}]}}})";
  for (const char* moisture : {"5 %", "13 %"}) {
    for (const char* wall : {"1 mm", "2 mm", "3 mm"}) {
      const std::string head =
          std::string("order: t\nmoisture: ") + moisture + "\nschedule: one\nspecies: cherry-black\nown finishes: [mine.yaml]";
      const std::string tube = std::string("shape: round tube, length: 1 m, diameter: 2 cm, wall: ") + wall;
      for (const char* from : {"2027-03-01 08:01", "2027-03-01 08:30"}) {
        const Outcome outcome = plan(order(head, tube), shop(places + steady), {"--from", from}, {{"mine.yaml", mine}});
        EXPECT_EQ(outcome.status, done) << moisture << wall << from << outcome.err;
      }
    }
  }
}

TEST(HardOrders, WhatIsBegunKeepsItsCupLimitThoughItsWoodIsNotAtRest) {
  const auto status = [](const std::string& moisture, const std::string& limit) {
    const std::string head = "order: t\nschedule: water-clear-three-coats\nspecies: walnut\nmoisture band: 0.5 %\nmoisture: " + moisture +
                             "\ncup limit: " + limit;
    const std::string wide = "shape: board, length: 1 m, width: 60 cm, thickness: 2 cm";
    const std::string sanded = history({{"sand-to-150", "01 08:00", "01 08:15"}});
    return plan(order(head, wide, sanded), shop(places + steady), {"--from", "2027-03-01 09:00"}).status;
  };
  for (const char* moisture : {"5 %", "11 %"}) {
    EXPECT_EQ(status(moisture, "1 mm"), no_plan) << moisture;
    EXPECT_EQ(status(moisture, "4 mm"), done) << moisture;
  }
  EXPECT_EQ(status("5 %", "2 mm"), no_plan);
}

TEST(HardOrders, DryWithinTheLastMinutesOfAShiftLeavesInTheNext) {
  for (const char* closes : {"01:29", "01:32", "01:36"}) {  // safely dry at 01:31
    const std::string nights = shop(places + steady, std::string("{mon-sun: \"00:00-") + closes + "\"}");
    const Outcome outcome = plan(order(clear, board, all_done), nights, {"--from", "2027-03-04 08:00"});
    EXPECT_EQ(outcome.status, done) << closes << outcome.err;
  }
}

/// Nobody wrote down that it was done. The plan cannot put it into the past, nor leave it out.
TEST(HardOrders, WorkWhoseHourIsOverIsRefusedWithWhatToDo) {
  for (const char* when : {"before finishing", "after finishing", "delivery"}) {
    const std::string work = std::string("    work: [{name: weld, when: ") + when + ", takes: 1 h, start: 2027-03-01 10:00}]\n";
    const Outcome late = plan(order(clear, board, work), shop(places + steady), {"--from", "2027-03-08 08:00"});
    EXPECT_EQ(late.status, no_plan) << when << late.err;
    EXPECT_TRUE(says(late.out, "weld was to start at Mon 1 Mar 10:00, before this plan begins;")) << late.out;
  }
  const std::string weld = "    work: [{name: weld, when: before finishing, takes: 1 h, start: 2027-03-01 10:00}]\n";
  const std::string recorded = "history:\n  - {event: p/weld, start: 2027-03-01 10:00, end: 2027-03-01 11:00}\n";
  EXPECT_EQ(plan(order(clear, board, weld + recorded), shop(places + steady), {"--from", "2027-03-08 08:00"}).status, done);
}

}  // namespace
}  // namespace coatday::cli
