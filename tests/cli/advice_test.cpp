// What advice says comes true: each change that a plan advises, set by hand in the files' own words, is ready when the advice says.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <regex>

#include "cli/run.h"
#include "input/open.h"
#include "planner/advice/another_product.h"
#include "tests/cli/typed.h"
#include "tests/support/source_dir.h"

namespace coatday::cli {
namespace {

using Json = nlohmann::json;
using Args = std::vector<std::string>;

const std::string head = R"(shop: cold shop
time zone: America/Chicago
currency: EUR
hours: {mon-fri: "08:00-12:00, 13:00-17:00"}
methods: [brush, pad, wipe]
drying places:
  - {name: trestle, kind: points, count: 4}
own finishes: [own.yaml]
)";
/// Three coats of varnish as shipped, with the water-based clear in its place.
const std::string own = R"(schedules:
  clear-as-varnish:
    name: clear in place of varnish
    suits: wood
    use: this test
    source: invented
    steps:
      - {step: sand to 150, kind: prepare, grit: 150, rate: 3 m2/h, dusty: yes}
      - {step: sand to 180, kind: prepare, grit: 180, rate: 5 m2/h, dusty: yes}
      - {step: thinned seal coat, kind: seal, product: water-clear}
      - {step: scuff 1, kind: scuff, grit: 320, rate: 8 m2/h, dusty: yes}
      - {step: varnish 2, kind: topcoat, product: water-clear}
      - {step: scuff 2, kind: scuff, grit: 320, rate: 8 m2/h, dusty: yes}
      - {step: varnish 3, kind: topcoat, product: water-clear}
)";

struct Case {
  std::string name;
  std::string air;
  std::string schedule;
  std::string units = "metric";
  Args advised;  ///< how each change begins that is to be told, at least
};
void PrintTo(const Case& one, std::ostream* out) { *out << one.name; }

Environment environment(const Case& one) {
  const std::string order =
      "order: shelf\nshop: shop.yaml\nstart: 2027-01-11 08:00\npieces:\n  - piece: shelf\n    species: walnut-black\n    schedule: " +
      one.schedule + "\n    parts:\n      - {part: board, shape: board, length: 900 mm, width: 250 mm, thickness: 20 mm}\n";
  return typed({{"order.yaml", order}, {"own.yaml", own}, {"shop.yaml", head + "units: " + one.units + "\nair:\n" + one.air}});
}

Json json(const Case& one, Args words) {
  words.insert(words.end(), {"--format", "json"});
  const Outcome outcome = run(words, environment(one));
  EXPECT_EQ(outcome.status, done) << outcome.err << outcome.out;
  return Json::parse(outcome.out);
}

std::string first(const std::string& text, const std::string& pattern) {
  std::smatch found;
  return std::regex_search(text, found, std::regex(pattern)) ? found.str() : "";
}

/// The keys of the shop and the order that say the same as the advice; none where it has other words.
Args keys(const Case& one, const Json& help) {
  const std::string change = help["change"], start = help["start"];
  const std::string degrees = first(change, "[0-9]+ °[CF]"), percent = first(change, "[0-9]+ %");
  const bool constant = one.air.find("  constant:") != std::string::npos;
  if (change.starts_with("start on ")) return {"start=" + start.substr(0, 10) + " " + start.substr(11, 5)};
  if (change.starts_with("water-based clear in place of oil varnish, as many coats")) return {"pieces.shelf.schedule=clear-as-varnish"};
  if (change.starts_with("keep the shop's air at ")) return {(constant ? "air.constant.humidity=" : "air.timetable.1.humidity=") + percent};
  if (change.starts_with("set the dehumidifier to ")) return {"air.dehumidifier.set point=" + percent};
  if (change.starts_with("a dehumidifier set to ")) return {"air.dehumidifier={set point: " + percent + ", removes: 2400 l/day}"};
  if (change.find("outside") != std::string::npos) return {"air.night=" + degrees};
  if (!change.starts_with("keep the shop at ") && !change.starts_with("set the heater to ")) return {};
  if (constant) return {"air.constant.temperature=" + degrees};
  return {"air.night=" + degrees, "air.timetable.1.heated=07:00-17:00 at " + degrees};
}

std::string ready(const Json& side) { return side["pieces"][0]["ready_safe"]["deliver"]; }

Instant ready_at(const Json& side) { return *parse_iso8601(side["result"]["ready_safe"].get<std::string>()); }

class Advised : public testing::TestWithParam<Case> {};

TEST_P(Advised, ComesTrueWhereItIsSetByHand) {
  const Case& one = GetParam();
  const Json plan = json(one, {"plan", "order.yaml"});
  const Json& advice = plan["advice"];
  ASSERT_TRUE(advice["tried"].get<bool>());
  for (const std::string& begins : one.advised) {
    const bool told = std::any_of(advice["suggestions"].begin(), advice["suggestions"].end(),
                                  [&](const Json& help) { return help["change"].get<std::string>().starts_with(begins); });
    EXPECT_TRUE(told) << begins << "\n" << advice.dump(1);
  }
  for (const Json& help : advice["suggestions"]) {
    const std::string change = help["change"];
    const Args by_hand = keys(one, help), given = help["set"].get<Args>();
    const Args set = given.empty() ? by_hand : given;
    ASSERT_FALSE(set.empty()) << "no key says: " << change;
    EXPECT_TRUE(given.empty() || given.size() == by_hand.size() || change.starts_with("a dehumidifier")) << help.dump();
    Args words{"what-if", "order.yaml"};
    for (const std::string& key : set) words.insert(words.end(), {"--set", key});
    const Json both = json(one, words);
    EXPECT_EQ(ready(both["before"]), ready(plan));
    EXPECT_EQ(ready(both["after"]), help["ready_safe"].get<std::string>()) << change << "\n" << testing::PrintToString(set);
    EXPECT_EQ(both["after"]["from"], help["start"]) << change;
    const double sooner = Hours(ready_at(both["before"]) - ready_at(both["after"])).count();
    if (help["start"] == plan["from"]) {
      EXPECT_NEAR(help["sooner_h"].get<double>(), sooner, 1e-6) << change;
    }
    const Json heat = both["heat"], kwh = help["heat_kwh"];
    EXPECT_EQ(kwh.is_null(), heat["before"].is_null()) << change;
    if (!kwh.is_null()) {
      const double more = heat["after"]["energy_kwh"].get<double>() - heat["before"]["energy_kwh"].get<double>();
      EXPECT_NEAR(kwh.get<double>(), more, 1e-6 * std::abs(more)) << change;
      EXPECT_NEAR(help["heat_dearer"].get<double>(), 0.15 * more, 1e-6 * std::abs(more)) << change;
    }
    const bool bought = both["before"]["purchase"] != both["after"]["purchase"];
    EXPECT_TRUE(bought || help["buy"].empty()) << change;
  }
}

const std::string outdoors = "  outdoors: chicago.csv\n  time constant: 12 h\n";
const std::string heated = "  timetable:\n    - {heated: 07:00-17:00 at 18 °C, otherwise: 10 °C";
const std::string moist = "  volume: 150 m3\n  air changes: 0.4\n  moisture gain: 650 g/h\n";

INSTANTIATE_TEST_SUITE_P(
    All, Advised,
    testing::Values(
        Case{"constant",
             "  constant: {temperature: 15 °C, humidity: 45 %}\n",
             "oil-varnish-three-coats",
             "metric",
             {"keep the shop at 22 °C", "water-based clear"}},
        Case{"damp",
             "  constant: {temperature: 20 °C, humidity: 75 %}\n",
             "water-clear-three-coats",
             "metric",
             {"keep the shop's air at 40 % RH"}},
        Case{"damp_timetable",
             "  timetable:\n    - {heated: 07:00-17:00 at 20 °C, otherwise: 19 °C, humidity: 75 %}\n",
             "water-clear-three-coats",
             "metric",
             {"keep the shop's air at 40 % RH"}},
        Case{"timetable",
             heated + ", humidity: 50 %}\n",
             "oil-varnish-three-coats",
             "metric",
             {"keep the shop at 22 °C", "heat outside the heated hours", "water-based"}},
        Case{"us_units",
             heated + ", humidity: 50 %}\n",
             "water-clear-three-coats",
             "us",
             {"heat outside the heated hours, nights and days off: 64 °F"}},
        Case{"outdoors", outdoors + heated + "}\n", "oil-varnish-three-coats", "metric", {"keep the shop at 22 °C", "heat outside"}},
        Case{"heater",
             outdoors + "  heater: {lifts: 30 K, power: 12 kW}\n  energy price: 0.15\n" + heated + "}\n",
             "oil-varnish-three-coats",
             "us",
             {"set the heater to 72 °F or more", "set the heater to 64 °F outside"}},
        Case{"heater_off_at_night",
             outdoors + "  heater: {lifts: 30 K}\n  timetable:\n    - {days: mon-fri, heated: 07:00-17:00 at 18 °C}\n",
             "water-clear-three-coats",
             "metric",
             {"set the heater to 18 °C outside"}},
        Case{"a_dehumidifier",
             outdoors + moist + "  timetable:\n    - {heated: 07:00-17:00 at 22 °C, otherwise: 20 °C}\n",
             "water-clear-three-coats",
             "metric",
             {"a dehumidifier set to 40 %"}},
        Case{"its_dehumidifier",
             outdoors + moist +
                 "  dehumidifier: {set point: 70 %, removes: 20 l/day}\n  timetable:\n    - {heated: 07:00-17:00 at 22 °C, otherwise: 20 "
                 "°C}\n",
             "water-clear-three-coats",
             "metric",
             {"set the dehumidifier to 40 %"}}),
    [](const auto& instance) { return instance.param.name; });

/// Where there is no plan, what would help gives one when it is set by hand, and a degree less does not.
TEST(Proposed, GivesAPlanWhereThereIsNone) {
  const Case cold{"cold", "  constant: {temperature: 4 °C, humidity: 60 %}\n", "water-clear-three-coats", "metric", {}};
  const Outcome none = run({"plan", "order.yaml", "--format", "json"}, environment(cold));
  ASSERT_EQ(none.status, no_plan) << none.err;
  const Json proposals = Json::parse(none.out)["result"]["proposals"];
  ASSERT_EQ(proposals.size(), 1U) << proposals;
  EXPECT_EQ(proposals[0]["set"], Json{"air.constant.temperature=10 °C"});
  const auto status = [&](const std::string& degrees) {
    return run({"plan", "order.yaml"},
               environment({"cold", "  constant: {temperature: " + degrees + " °C, humidity: 60 %}\n", cold.schedule, "metric", {}}))
        .status;
  };
  EXPECT_EQ(status("10"), done);
  EXPECT_EQ(status("9"), no_plan);
}

/// Rules read here, apart from what judges an order: every layer over the one below by a rule that does not forbid it.
void expect_layers_allowed(const finish::Catalogue& known, const finish::Schedule& schedule, const std::string& change) {
  const finish::Product* below = nullptr;
  for (const finish::Step& step : schedule.steps) {
    if (!step.product) continue;
    const finish::Product& here = *known.product(*step.product);
    const finish::OverRule* rule = below == nullptr ? nullptr : known.over_rule(here, *below);
    EXPECT_TRUE(below == nullptr || here.id == below->id || (rule != nullptr && rule->verdict != finish::Verdict::never))
        << schedule.id << ": " << here.id << " over " << below->id << "; " << change;
    if (here.film) below = &here;
  }
}

bool goes_on(const finish::Catalogue& known, const std::string& product, finish::Suits suits) {
  return std::any_of(known.schedules.begin(), known.schedules.end(), [&](const auto& one) {
    const auto& steps = one.second.steps;
    return one.second.suits == suits && std::any_of(steps.begin(), steps.end(), [&](const auto& step) { return step.product == product; });
  });
}

/// What may stand in place of a finish of any shipped schedule has the same role, is put on the same material by some schedule, is faster by
/// its record and may lie on and under its neighbours; nothing else of the schedule changes but the thinner of another base.
TEST(AnotherProduct, MayStandWhereItIsAdvised) {
  const std::string every_method = "methods=[brush, pad, wipe, hvlp-spray]";
  int told = 0;
  const auto shipped = input::open_catalogue({}, std::filesystem::path(source_dir()) / "schedules", input::read_from_disk());
  ASSERT_TRUE(shipped);
  for (const auto& [id, schedule] : shipped->job.catalogue.schedules) {
    const Environment w = environment({id, "  constant: {temperature: 20 °C, humidity: 45 %}\n", id, "metric", {}});
    const auto opened = input::open_orders({"order.yaml"}, *w.schedules, w.read, {every_method});
    if (!opened) continue;  // a schedule for metal, or one that has to be completed from a label
    const job::Job* job = &opened->job;
    for (const planner::ChangeSizes& sizes : planner::another_product(*job)) {
      for (const planner::Change& change : sizes) {
        job::Job other = *job;
        Instant from{};
        change.make(other, from);
        const finish::Schedule& now = other.catalogue.schedules.at(id);
        ASSERT_EQ(now.steps.size(), schedule.steps.size());
        const std::string words = change.text(job::Plan());
        ++told;
        for (std::size_t s = 0; s < now.steps.size(); ++s) {
          const finish::Step &was = schedule.steps[s], &is = now.steps[s];
          if (was.product == is.product) {
            EXPECT_EQ(is.thinner_share, was.thinner_share);
            continue;
          }
          const finish::Product &old = *job->catalogue.product(*was.product), &next = *job->catalogue.product(*is.product);
          EXPECT_TRUE(words.starts_with(next.name + " in place of " + old.name + ", as many coats")) << words;
          for (const finish::Hazard hazard : next.hazards) {
            const bool known = std::find(old.hazards.begin(), old.hazards.end(), hazard) != old.hazards.end();
            EXPECT_EQ(words.find(finish::word(hazard), words.find("new hazards")) == std::string::npos, known) << words;
          }
          EXPECT_EQ(next.role, old.role) << words;
          EXPECT_EQ(next.film, old.film) << words;
          EXPECT_LT(next.reference().hours[finish::Stage::recoat], old.reference().hours[finish::Stage::recoat]) << words;
          EXPECT_TRUE(goes_on(job->catalogue, next.id, schedule.suits)) << words;
          EXPECT_EQ(is.thinner_share, next.base == old.base ? was.thinner_share : 0) << words;
        }
        expect_layers_allowed(other.catalogue, now, words);
      }
    }
  }
  EXPECT_GE(told, 10);
}

/// Laid varnish cannot be turned in time; the keys that help say of which order they are.
TEST(Advice, OfSeveralOrdersNamesTheOrder) {
  const auto order = [](const std::string& name, const std::string& support) {
    return "order: " + name + "\nshop: shop.yaml\nstart: 2027-01-11 08:00\npieces:\n  - piece: " + name +
           "\n    species: walnut-black\n    schedule: oil-varnish-three-coats\n    parts:\n      - {part: board, shape: board, length: "
           "900 mm, "
           "width: 250 mm, thickness: 20 mm, support: " +
           support + "}\n";
  };
  const std::string cold = "drying places: [{name: points, kind: points, count: 2}, {name: rack, kind: rack, count: 2}]\n";
  const Environment two = typed({{"a.yaml", order("shelf", "points")},
                                 {"b.yaml", order("lid", "laid")},
                                 {"shop.yaml", "shop: s\ntime zone: UTC\nhours: {mon-fri: \"08:00-17:00\"}\nmethods: [brush, wipe]\n" +
                                                   cold + "air: {constant: {temperature: 14 °C, humidity: 60 %}}\n"}});
  const Outcome refused = run({"plan", "a.yaml", "b.yaml", "--format", "json"}, two);
  ASSERT_EQ(refused.status, no_plan) << refused.err;
  const Json help = Json::parse(refused.out)["result"]["proposals"];
  const auto by_points = std::find_if(help.begin(), help.end(),
                                      [](const Json& one) { return one["set"] == Json{"orders.2.pieces.1.parts.1.support=points"}; });
  ASSERT_NE(by_points, help.end()) << help.dump(1);
  const Outcome set = run({"what-if", "a.yaml", "b.yaml", "--set", "orders.2.pieces.1.parts.1.support=points", "--format", "json"}, two);
  EXPECT_EQ(Json::parse(set.out)["after"]["result"]["ready_safe"], (*by_points)["ready_safe"]);
}

}  // namespace
}  // namespace coatday::cli
