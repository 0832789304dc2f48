// What other programs read, against what is calculated apart from it: closed forms in constant air, published examples, two runs beside one.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/run.h"
#include "tests/cli/typed.h"

namespace coatday::cli {
namespace {

using Json = nlohmann::json;
using Args = std::vector<std::string>;

const std::string head = R"(shop: shop of figures
time zone: UTC
currency: EUR
hours: {mon-fri: "08:00-12:00, 13:00-17:00"}
methods: [brush, pad, wipe]
drying places:
  - {name: trestle, kind: points, count: 6}
own finishes: [own.yaml]
)";
const std::string reference = "air:\n  constant: {temperature: 23 °C, humidity: 50 %}\n";

const std::string own = R"(products:
  like-toluene:
    name: all of it toluene
    like: oil-varnish
    voc: [867 g/l, "from memory: the density of toluene at 20 °C"]
    solvent: toluene
  two-rows:
    name: varnish with two rows on its label
    like: oil-varnish
    reference air: 23 °C 50 %
    times: {recoat: 12 h}
    times at:
      - {air: 12 °C 50 %, recoat: 24 h}
schedules:
  two-rows:
    name: one coat by two rows
    suits: wood
    use: this test
    source: invented
    steps:
      - {step: sand, kind: prepare, grit: 180, rate: 3 m2/h, dusty: yes}
      - {step: coat, kind: topcoat, product: two-rows}
  thick-clear:
    name: one thick coat of clear
    suits: wood
    use: this test
    source: invented
    steps:
      - {step: sand, kind: prepare, grit: 180, rate: 3 m2/h, dusty: yes}
      - {step: clear, kind: topcoat, product: water-clear, wet film: 130 um}
  toluene:
    name: one coat of what is all toluene
    suits: wood
    use: this test
    source: invented
    steps:
      - {step: sand, kind: prepare, grit: 180, rate: 3 m2/h, dusty: yes}
      - {step: coat, kind: topcoat, product: like-toluene}
)";

std::string order(const std::string& schedule) {
  return "order: shelf\nshop: shop.yaml\nstart: 2027-01-11 08:00\npieces:\n  - piece: shelf\n    species: walnut-black\n    schedule: " +
         schedule + "\n    parts:\n      - {part: board, shape: board, length: 900 mm, width: 250 mm, thickness: 20 mm}\n";
}

/// The same air outdoors at every hour.
std::string outdoors(const std::string& air) {
  constexpr int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  std::string text = "# utc_offset_h 0\nmonth,day,hour,t_C,rh_pct\n";
  for (int month = 1; month <= 12; ++month)
    for (int day = 1; day <= days[month - 1]; ++day)
      for (int hour = 1; hour <= 24; ++hour)
        text += std::to_string(month) + "," + std::to_string(day) + "," + std::to_string(hour) + "," + air + "\n";
  return text;
}

std::string printed(const Args& words, Files files) {
  files.insert({"own.yaml", own});
  const Outcome outcome = run(words, typed(std::move(files)));
  EXPECT_EQ(outcome.status, done) << outcome.err << outcome.out.substr(0, 1000);
  return outcome.out;
}

Json json(Args words, const Files& files) {
  words.insert(words.end(), {"--format", "json"});
  return Json::parse(printed(words, files));
}

Json plan(const std::string& air, const std::string& schedule) {
  return json({"plan", "order.yaml"}, {{"order.yaml", order(schedule)}, {"shop.yaml", head + air}});
}

/// Hours since 1970 of an instant at UTC, "2027-01-11T08:00:00+00:00".
double hours(const Json& instant) {
  std::istringstream in(instant.get<std::string>().substr(0, 19));
  std::chrono::sys_seconds t;
  date::from_stream(in, "%FT%T", t);
  EXPECT_FALSE(in.fail()) << instant;
  return static_cast<double>(t.time_since_epoch().count()) / 3600;
}

std::vector<Json> coats(const Json& plan) {
  std::vector<Json> all;
  for (const Json& event : plan["events"]) {
    if (event["film"].get<bool>()) all.push_back(event);
  }
  EXPECT_FALSE(all.empty());
  return all;
}

constexpr double a_second = 1.0 / 3600;
constexpr const char* drying_stages[] = {"tack_free", "handle", "sand", "recoat"};
constexpr const char* cure_stages[] = {"recoat_close", "pack", "light_use", "full_cure"};

/// In the reference air every clock shows elapsed time; the room and the film alone change it.
void expect_reference_stages(const Json& coat, const Json& finish) {
  const double drying = finish["rate_factor"]["drying"], cure = finish["rate_factor"]["cure"], film = coat.value("drying_factor", 1.0);
  const Json& takes = finish["stages_h"];
  for (const char* stage : drying_stages) {
    if (takes[stage].is_null()) continue;
    const double nominal = takes[stage].get<double>() / drying;
    EXPECT_NEAR(hours(coat["stages"][stage]) - hours(coat["end"]), nominal * film, a_second) << coat["id"] << stage;
    const double late = coat.value("drying_factor_slow", 1.0), early = coat.value("drying_factor_fast", 1.0);
    EXPECT_NEAR(hours(coat["stages_safe"][stage]) - hours(coat["end"]), 1.4 * nominal * late, a_second) << coat["id"] << stage;
    EXPECT_NEAR(hours(coat["stages_earliest"][stage]) - hours(coat["end"]), nominal * early / 1.4, a_second) << coat["id"] << stage;
  }
  for (const char* stage : cure_stages) {
    if (takes[stage].is_null() || film != 1) continue;
    const bool from_recoat = finish["cure_clock"]["starts"] == "recoat";
    const double recoat = from_recoat ? takes["recoat"].get<double>() : 0;
    const double nominal = recoat / drying + (takes[stage].get<double>() - recoat) / cure;
    EXPECT_NEAR(hours(coat["stages"][stage]) - hours(coat["end"]), nominal, a_second) << coat["id"] << stage;
  }
}

TEST(JsonOfPlan, StagesInTheReferenceAirAreTheRecordsTimesAtTheRoomsRates) {
  const std::string closed = reference + "ventilation: {room: closed, air movement: 1.5}\n", open = reference;
  for (const std::string schedule : {"wiping-oil-three-coats", "water-clear-three-coats"}) {
    const bool oil = schedule.starts_with("wiping");
    for (const std::string& air : {open, closed}) {
      const Json made = plan(air, schedule);
      const Json& finish = made["finishes"][oil ? "wiping-oil" : "water-clear"];
      const Json rates = air == open ? Json{{"drying", 1.0}, {"cure", 1.0}}
                         : oil       ? Json{{"drying", 0.5}, {"cure", 0.5}}
                                     : Json{{"drying", 1.5}, {"cure", 1.0}};
      EXPECT_EQ(finish["rate_factor"], rates);
      EXPECT_EQ(made["shop"]["ventilation"]["room"], air == open ? "open" : "closed");
      EXPECT_EQ(made["shop"]["ventilation"]["air_movement"], air == open ? 1.0 : 1.5);
      for (const Json& coat : coats(made)) expect_reference_stages(coat, made["finishes"][coat["finish"].get<std::string>()]);
    }
  }
}

/// A water-based film dries in proportion to its thickness (judgement), and takes as much finish as it is thick.
TEST(JsonOfPlan, AThickFilmDriesLongerByItsThickness) {
  const Json made = plan(reference, "thick-clear");
  const Json& finish = made["finishes"]["water-clear"];
  const double usual = finish["times_for_wet_film_um"];
  for (const Json& coat : coats(made)) {
    EXPECT_EQ(coat["wet_film_um"], 130.0);
    for (const char* side : {"drying_factor", "drying_factor_slow", "drying_factor_fast"})
      EXPECT_NEAR(coat[side].get<double>(), 130 / usual, 1e-12);
    expect_reference_stages(coat, finish);
  }
}

/// 29 CFR 1910.94(c)(6)(ii)(c): toluene, 30.4 cubic feet of vapour a gallon, lower explosive limit 1.4 %: 4 (100 - 1.4) 30.4 / 1.4 = 8564 cubic
/// feet of fresh air a gallon (from memory).
TEST(JsonOfPlan, SolventTakesTheAirOfThePublishedExample) {
  const Json made = plan(reference + "ventilation: {airflow: 2000 m3/h}\n", "toluene");
  constexpr double cubic_metres_a_litre = 8564 * 0.028316846592 / 3.785411784;
  const double density = made["finishes"]["like-toluene"]["solvent"]["density_g_per_l"];
  for (const Json& coat : coats(made)) {
    const double litres = coat["solvent_l"], air = coat["air_needed_m3"], an_hour = coat["air_needed_m3_per_h"];
    EXPECT_NEAR(air / litres, cubic_metres_a_litre, 0.001 * cubic_metres_a_litre);
    EXPECT_NEAR(coat["solvent_g"].get<double>(), litres * density, 1e-6);
    EXPECT_NEAR(litres, coat["volume_ml"].get<double>() / 1000, 0.01 * litres) << "all of it evaporates";
    EXPECT_NEAR(coat["solvent_l_per_h"].get<double>(), an_hour / cubic_metres_a_litre, 0.001 * an_hour / cubic_metres_a_litre);
    EXPECT_NEAR(coat["solvent_g_per_h"].get<double>(), coat["solvent_l_per_h"].get<double>() * density, 1e-6);
    EXPECT_LE(an_hour, 2000);
  }
  const Json& room = made["shop"]["ventilation"];
  EXPECT_EQ(room["airflow_m3_per_h"], 2000.0);
  EXPECT_EQ(room["share_of_lower_explosive_limit"], 0.25);
  EXPECT_EQ(room["permit"], false);
}

/// Twice the time at 12 °C as at 23 °C: E = R ln 2 / (1/285.15 K - 1/296.15 K) = 44.2 kJ/mol, and nothing is left over.
TEST(JsonOfPlan, AStageOfTwoLabelRowsHasTheirActivationEnergy) {
  const double energy = 8.314462618e-3 * std::log(2) / (1 / 285.15 - 1 / 296.15);
  const Json made = plan("air:\n  constant: {temperature: 15 °C, humidity: 50 %}\n", "two-rows");
  const Json& clocks = made["finishes"]["two-rows"]["stage_clocks"];
  EXPECT_EQ(clocks["recoat"]["law"], "arrhenius");
  EXPECT_NEAR(clocks["recoat"]["ea_kj_per_mol"].get<double>(), energy, 1e-6);
  EXPECT_NEAR(clocks["recoat"]["residual"].get<double>(), 0, 1e-9);
  EXPECT_EQ(clocks["pack"], Json()) << "one row says nothing of how";
  for (const Json& coat : coats(made)) {
    const double expected = 12 * std::exp(energy / 8.314462618e-3 * (1 / 288.15 - 1 / 296.15));
    EXPECT_NEAR(hours(coat["stages"]["recoat"]) - hours(coat["end"]), expected, a_second);
  }
}

/// Magnus' formula, a = 17.62, b = 243.12 °C (WMO-No. 8, from memory): within 0.1 K here.
double dew_point(double t, double humidity) {
  const double x = std::log(humidity) + 17.62 * t / (243.12 + t);
  return 243.12 * x / (17.62 - x);
}

TEST(JsonOfPlan, EachRowOfTheAirTellsItsSource) {
  std::string log = "time,t_C,rh_pct\n";
  for (int half = 0; half <= 48; ++half)
    log += std::string("2027-01-") + (half < 32 ? "11 " : "12 ") + (half / 2 % 24 + 8 < 34 && (half / 2 + 8) % 24 < 10 ? "0" : "") +
           std::to_string((half / 2 + 8) % 24) + (half % 2 == 0 ? ":00" : ":30") + ",17,55\n";
  const std::string air = "air:\n  log: log.csv\n  timetable:\n    - {heated: 07:00-17:00 at 21 °C, otherwise: 15 °C, humidity: 40 %}\n";
  const Json made =
      json({"plan", "order.yaml"}, {{"order.yaml", order("water-clear-three-coats")}, {"shop.yaml", head + air}, {"log.csv", log}});
  const double begin = hours("2027-01-11T08:00:00+00:00"), end = begin + 24;
  std::map<std::string, int> sources;
  for (const Json& row : made["air"]) {
    const double t = hours(row["time"]), temperature = row["temperature_c"], humidity = row["relative_humidity"];
    ++sources[row["source"]];
    EXPECT_NEAR(row["dew_point_c"].get<double>(), dew_point(temperature, humidity), 0.1);
    if (t >= begin && t < end) {
      EXPECT_EQ(row["source"], "logger");
      EXPECT_NEAR(temperature, 17, 1e-9);
      EXPECT_NEAR(humidity, 0.55, 1e-9);
      continue;
    }
    if (t < end) continue;  // before the plan's first morning the log has not begun
    const double clock = std::fmod(t, 24), stated = clock >= 7 && clock < 17 ? 21 : 15;
    EXPECT_NEAR(temperature, stated + (17 - 21) * std::exp(-(t + 0.25 - end) / 4), 0.005) << "the step at the log's end fades with 4 h";
    EXPECT_EQ(row["source"], t < end + 4 * std::log(1 / 0.05) - 0.25 ? "logger and next source blended" : "timetable")
        << "until a twentieth of it is left";
    EXPECT_NEAR(humidity, 0.4, t > end + 24 ? 5e-4 : 0.2);
  }
  EXPECT_EQ(sources["logger"], 48);
}

/// k = exp(-E / R (1/T - 1/T_ref)), E = 50 kJ/mol as the record says, R = 8.314462618 J/(mol K) (CODATA 2018).
TEST(JsonOfFinishAt, ArrheniusByHand) {
  const Json warm = json({"finishes", "oil-varnish", "--at", "23 °C 50 %"}, {});
  for (const auto& [air, degrees, factor] :
       {std::tuple("18 °C 60 %", 18.0, 1.4), std::tuple("12 °C 60 %", 12.0, 2.0), std::tuple("28 °C 25 %", 28.0, 2.0)}) {
    const Json at = json({"finishes", "oil-varnish", "--at", air}, {});
    const double slower = std::exp(50000 / 8.314462618 * (1 / (degrees + 273.15) - 1 / 296.15));
    EXPECT_EQ(at["air"]["temperature_c"], degrees);
    EXPECT_EQ(at["factor"], factor);
    int stages = 0;
    for (const auto& [stage, reference_h] : warm["stages_h"].items()) {
      EXPECT_EQ(at["stages_h"][stage].is_null(), reference_h.is_null()) << stage;
      if (reference_h.is_null()) continue;
      const double expected = reference_h.get<double>() * slower;
      EXPECT_NEAR(at["stages_h"][stage].get<double>(), expected, 1e-9 * expected) << stage;
      EXPECT_NEAR(at["stages_safe_h"][stage].get<double>(), expected * factor, 1e-9 * expected) << stage;
      EXPECT_NEAR(at["stages_earliest_h"][stage].get<double>(), expected / factor, 1e-9 * expected) << stage;
      ++stages;
    }
    EXPECT_GE(stages, 6);
  }
}

TEST(JsonOfWhatIf, IsThatOfTwoPlansAndTheDegreesBetween) {
  const std::string cool = "air:\n  constant: {temperature: 18 °C, humidity: 50 %}\n";
  const Files files{{"order.yaml", order("water-clear-three-coats")}, {"shop.yaml", head + cool}};
  const Json both = json({"what-if", "order.yaml", "--set", "air.constant.temperature=21 °C"}, files);
  const Json before = plan(cool, "water-clear-three-coats"),
             after = plan("air:\n  constant: {temperature: 21 °C, humidity: 50 %}\n", "water-clear-three-coats");
  for (const auto& [side, alone] : {std::pair("before", &before), std::pair("after", &after)}) {
    for (const char* key : {"ready", "ready_safe", "ready_earliest", "slack_h"})
      EXPECT_EQ(both[side]["pieces"][0][key], (*alone)["pieces"][0][key]);
    EXPECT_EQ(both[side]["purchase"], (*alone)["purchase"]);
    EXPECT_EQ(both[side]["result"]["ready_safe"], (*alone)["result"]["ready_safe"]);
  }
  std::map<std::string, Json> was;
  for (const Json& coat : coats(before)) was[coat["id"]] = coat["start"];
  std::map<std::string, std::pair<Json, Json>> moved, told;
  for (const Json& coat : coats(after)) {
    if (was.at(coat["id"]) != coat["start"]) moved[coat["id"]] = {was.at(coat["id"]), coat["start"]};
  }
  for (const Json& move : both["moved"]) told[move["event"]] = {move["was"], move["start"]};
  EXPECT_FALSE(told.empty());
  EXPECT_EQ(told, moved);
  EXPECT_EQ(both["coats"], (Json{{"stayed", was.size() - moved.size()}, {"added", 0}, {"gone", 0}}));
  const double span = hours(both["heat"]["until"]) - hours("2027-01-11T08:00:00+00:00");
  EXPECT_NEAR(both["heat"]["hours"].get<double>(), span, 0.5);
  EXPECT_NEAR(both["heat"]["warmer_k_h"].get<double>(), 3 * both["heat"]["hours"].get<double>(), 1e-6);
  EXPECT_EQ(both["heat"]["cooler_k_h"], 0.0);
  EXPECT_EQ(both["heat"]["before"], Json()) << "no heater is told";
}

/// A room held 18 K above outdoors by a heater of 12 kW that lifts it by 60 K uses 12 * 18 / 60 = 3.6 kW; held 21 K above, 4.2 kW.
TEST(JsonOfWhatIf, HeatIsTheLossOfTheRoom) {
  const std::string held =
      "air:\n  outdoors: flat.csv\n  time constant: 12 h\n  heater: {lifts: 60 K, power: 12 kW}\n  energy price: 0.15\n  night: 18 °C\n";
  const Files files{{"order.yaml", order("oil-varnish-three-coats")}, {"shop.yaml", head + held}, {"flat.csv", outdoors("0,80")}};
  const Json both = json({"what-if", "order.yaml", "--set", "air.night=21 °C"}, files);
  const double span = both["heat"]["hours"];
  EXPECT_GT(span, 200);
  for (const auto& [side, power] : {std::pair("before", 3.6), std::pair("after", 4.2)}) {
    EXPECT_NEAR(both["heat"][side]["energy_kwh"].get<double>(), power * span, 1e-6 * power * span);
    EXPECT_NEAR(both["heat"][side]["cost"].get<double>(), 0.15 * power * span, 1e-6 * power * span);
  }
}

struct Table {
  std::vector<std::string> columns;
  std::vector<std::map<std::string, std::string>> rows;
};
Table table(const std::string& text) {
  Table result;
  std::istringstream lines(text);
  std::string line;
  while (std::getline(lines, line)) {
    std::vector<std::string> cells;
    std::istringstream in(line + ",");
    for (std::string cell; std::getline(in, cell, ',');) cells.push_back(cell);
    if (result.columns.empty()) {
      result.columns = cells;
      continue;
    }
    auto& row = result.rows.emplace_back();
    EXPECT_EQ(cells.size(), result.columns.size());
    for (std::size_t c = 0; c < cells.size(); ++c) row[result.columns[c]] = cells[c];
  }
  return result;
}

/// Newton's law of cooling from 20 °C towards 5 °C with 24 h, from 17:00 to 07:00; each row holds the mean of its half hour. The finish goes on
/// from 16 °C, and its can lags behind the room in the morning.
TEST(JsonOfAir, NightsCoolByNewtonsLawAndTheTableSaysTheSame) {
  const std::string air = "air:\n  outdoors: flat.csv\n  time constant: 24 h\n  timetable:\n    - {heated: 07:00-17:00 at 20 °C}\n";
  const Files files{{"shop.yaml", head + air}, {"flat.csv", outdoors("5,80")}};
  const std::string finish = "two-part-polyurethane";
  const Args words{"air", "shop.yaml", "--finish", finish, "--from", "2027-01-11 08:00", "--days", "3"};
  const Json all = json(words, files);
  Args as_csv = words;
  as_csv.insert(as_csv.end(), {"--format", "csv"});
  const Table csv = table(printed(as_csv, files));
  ASSERT_EQ(all["rows"].size(), 3U * 48);
  ASSERT_EQ(csv.rows.size(), all["rows"].size());
  const auto cooled = [](double h) { return 5 + 15 * 24 / 0.5 * (std::exp(-h / 24) - std::exp(-(h + 0.5) / 24)); };
  for (std::size_t r = 0; r < csv.rows.size(); ++r) {
    const Json& row = all["rows"][r];
    const double clock = std::fmod(hours(row["time"]), 24);
    const double t = row["temperature_c"], humidity = row["relative_humidity"], dew = row["dew_point_c"];
    EXPECT_NEAR(t, clock >= 7 && clock < 17 ? 20 : cooled(clock >= 17 ? clock - 17 : clock + 7), 0.002) << row;
    EXPECT_NEAR(dew, dew_point(5, 0.8), 0.1) << "the water of outdoors";
    EXPECT_EQ(row["source"], "weather file");
    const bool working = (clock >= 8 && clock < 12) || (clock >= 13 && clock < 17);
    EXPECT_EQ(row["working"], working);
    const bool told = row["may_go_on"] == Json{finish};
    EXPECT_FALSE(told && t < 16) << row;
    EXPECT_TRUE(told || clock < 12 || t < 16.1) << row;
    const auto& cells = csv.rows[r];
    EXPECT_EQ(cells.at("time"), row["time"].get<std::string>());
    EXPECT_NEAR(std::stod(cells.at("t_c")), t, 0.0051);
    EXPECT_NEAR(std::stod(cells.at("rh_pct")), 100 * humidity, 0.051);
    EXPECT_NEAR(std::stod(cells.at("dew_point_c")), dew, 0.0051);
    EXPECT_EQ(cells.at("working"), working ? "1" : "0");
    EXPECT_EQ(cells.at(finish), told ? "1" : "0");
  }
  for (const Json& day : all["days"]) {
    EXPECT_EQ(day["open_c"], (Json{20.0, 20.0}));
    EXPECT_NEAR(day["closed_c"][0].get<double>(), cooled(13.5), 0.002);
    EXPECT_EQ(day["saturated_h"], 0.0);
  }
}

/// Held 20 K above outdoors by a heater that lifts by 60 K: a third of each half hour at full output. 14 °C at 85 % has 8.46 g/kg, 20 °C at 40 %
/// 5.8: a dehumidifier takes out the difference of 0.4 air changes, 71.7 kg/h of dry air, and the gain.
TEST(JsonOfAir, HeaterAndDehumidifierDoWhatTheBalanceAsks) {
  const std::string air =
      "air:\n  outdoors: flat.csv\n  time constant: 12 h\n  heater: {lifts: 18 K}\n  night: 20 °C\n  volume: 150 m3\n  air changes: 0.4\n"
      "  moisture gain: 100 g/h\n  dehumidifier: {set point: 40 %, removes: 200 l/day}\n";
  const Json all =
      json({"air", "shop.yaml", "--from", "2027-01-11 08:00", "--days", "1"}, {{"shop.yaml", head + air}, {"flat.csv", outdoors("14,85")}});
  const auto ratio = [](double pressure) { return 0.621945 * pressure / (101325 - pressure); };  // ASHRAE Fundamentals 2017 ch. 1 eq. 20
  const double water_out = ratio(0.85 * 1598.8), water_in = ratio(0.4 * 2338.8);                 // saturation pressures from memory
  const double dry_air = 150 * (101325 - 0.4 * 2338.8) / (287.042 * 293.15);
  const double removed = (0.4 * dry_air * (water_out - water_in) + 0.1) / 2;
  for (const Json& row : all["rows"]) {
    EXPECT_NEAR(row["heater_h"].get<double>(), 0.5 * 6 / 18, 1e-6);
    EXPECT_NEAR(row["relative_humidity"].get<double>(), 0.4, 1e-3);
    EXPECT_NEAR(row["removed_kg"].get<double>(), removed, 0.005 * removed);
    EXPECT_EQ(row["condensed_kg"], 0.0);
  }
}

/// Two days of a room that falls towards 0 °C with 10 h in its nights, by a thermometer that is off by 0.1 K to and fro.
std::string night_log() {
  std::string text = "time,t_C,rh_pct\n";
  double t = 20;
  for (int quarter = 0; quarter < 192; ++quarter) {
    const int hour = quarter / 4 % 24;
    t = hour >= 7 && hour < 17 ? 20 : t * std::exp(-0.25 / 10);
    text += "2027-01-" + std::to_string(11 + quarter / 96) + " " + (hour < 10 ? "0" : "") + std::to_string(hour) + ":" +
            (quarter % 4 == 0 ? "00" : std::to_string(quarter % 4 * 15)) + "," + std::to_string(t + (quarter % 2 == 0 ? 0.1 : -0.1)) + "," +
            std::to_string(60 - t) + "\n";
  }
  return text;
}

TEST(JsonOfFit, TheRoomThatMadeTheLogAndItsOwnResiduals) {
  const std::string air = "air:\n  outdoors: flat.csv\n  time constant: 30 h\n  timetable:\n    - {heated: 07:00-17:00 at 20 °C}\n";
  const Files files{{"shop.yaml", head + air}, {"flat.csv", outdoors("0,80")}, {"log.csv", night_log()}};
  const Json fit = json({"air", "shop.yaml", "--fit", "log.csv"}, files);
  const Table csv = table(printed({"air", "shop.yaml", "--fit", "log.csv", "--format", "csv"}, files));
  const Json& tau = fit["time_constant_h"];
  EXPECT_NEAR(tau["value"].get<double>(), 10, 0.1);
  EXPECT_LT(tau["low"].get<double>(), 10);
  EXPECT_GT(tau["high"].get<double>(), 10);
  EXPECT_NEAR(tau["rms"].get<double>(), 0.1, 0.01);
  EXPECT_EQ(fit["settles_at_c"], Json()) << "outdoors is told";
  ASSERT_EQ(fit["rows"].size(), 192U);
  ASSERT_EQ(csv.rows.size(), 192U);
  double squares = 0, worst = 0, sum = 0;
  int modelled = 0;
  for (std::size_t r = 0; r < csv.rows.size(); ++r) {
    const Json& row = fit["rows"][r];
    const auto& cells = csv.rows[r];
    EXPECT_NEAR(row["outdoors_c"].get<double>(), 0, 1e-9);
    EXPECT_EQ(cells.at("time"), row["time"].get<std::string>());
    EXPECT_NEAR(std::stod(cells.at("measured_c")), row["measured_c"].get<double>(), 0.0051);
    EXPECT_NEAR(std::stod(cells.at("measured_rh_pct")), 100 * row["measured_rh"].get<double>(), 0.051);
    EXPECT_EQ(cells.at("modelled_c").empty(), row["modelled_c"].is_null());
    if (row["modelled_c"].is_null()) continue;
    const double off = row["measured_c"].get<double>() - row["modelled_c"].get<double>();
    squares += off * off;
    sum += off;
    worst = std::max(worst, std::abs(off));
    ++modelled;
  }
  ASSERT_GT(modelled, 50);
  EXPECT_EQ(tau["readings"], modelled);
  EXPECT_NEAR(tau["rms"].get<double>(), std::sqrt(squares / modelled), 1e-9);
  EXPECT_NEAR(std::abs(tau["worst"].get<double>()), worst, 1e-9);
  EXPECT_NEAR(tau["bias"].get<double>(), sum / modelled, 1e-9);
}

}  // namespace
}  // namespace coatday::cli
