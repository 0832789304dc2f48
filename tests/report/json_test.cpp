// The keys are a promise to other programs: each list here is the schema's.
#include "report/files/json.h"

#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "tests/report/sample_plan.h"

namespace coatday::report {
namespace {

using Json = nlohmann::json;
using Keys = std::vector<std::string>;

Json parsed(const job::Plan& plan) { return Json::parse(plan_json(plan, "1.2.3")); }

Keys keys(const std::string& text) {
  const auto object = nlohmann::ordered_json::parse(text);
  Keys names;
  for (const auto& [key, value] : object.items()) names.push_back(key);
  return names;
}
Keys keys_at(const job::Plan& plan, const char* pointer) {
  const auto whole = nlohmann::ordered_json::parse(plan_json(plan, "1.2.3"));
  return keys(whole.at(nlohmann::ordered_json::json_pointer(pointer)).dump());
}

const Keys stages{"tack_free", "handle", "sand", "recoat", "recoat_close", "pack", "light_use", "full_cure"};
const Keys hand_over{"handle", "wrap", "deliver", "careful_use", "full_use"};

TEST(Json, Keys) {
  const job::Plan plan = sample::table();
  EXPECT_EQ(keys_at(plan, ""), (Keys{"schema", "program", "from", "shop", "air", "surfaces", "finishes", "pieces", "events", "places",
                                     "visits", "purchase", "warnings", "time_spent", "advice", "result"}));
  EXPECT_EQ(keys_at(plan, "/program"), (Keys{"name", "version"}));
  EXPECT_EQ(keys_at(plan, "/shop"), (Keys{"name", "timezone", "units", "people", "dust_settles_min", "ventilation", "working"}));
  EXPECT_EQ(keys_at(plan, "/shop/working/0"), (Keys{"start", "end"}));
  EXPECT_EQ(keys_at(plan, "/air/0"), (Keys{"time", "temperature_c", "relative_humidity", "dew_point_c", "source"}));
  EXPECT_EQ(keys_at(plan, "/places/0"), (Keys{"event", "place", "parts", "from", "until"}));
  EXPECT_EQ(keys_at(plan, "/purchase/0"),
            (Keys{"finish", "area_m2", "need_l", "on_hand_l", "buy", "left_over_l", "spare_l", "cost", "currency"}));
  EXPECT_EQ(keys_at(plan, "/purchase/0/buy/0"), (Keys{"size_l", "count", "price"}));
  EXPECT_EQ(keys_at(plan, "/warnings/0"), (Keys{"code", "severity", "message", "where"}));
  EXPECT_EQ(keys_at(plan, "/advice"), (Keys{"tried", "waits_for_air_h", "cut_off", "ready_after_longer_search", "suggestions"}));
  EXPECT_EQ(keys_at(plan, "/result"), (Keys{"status", "proven", "search_cut_off", "ready_safe", "could_end_sooner_h", "late_h_total",
                                            "late_days_total", "late_days_at_least", "seconds"}));
}

TEST(Json, KeysOfFinishes) {
  const job::Plan plan = sample::table();
  EXPECT_EQ(keys_at(plan, "/finishes/clear"), (Keys{"name", "base", "role", "mechanism", "reference_air", "stages_h", "drying_clock",
                                                    "cure_clock", "stage_clocks", "rate_factor", "limits", "times_for_wet_film_um",
                                                    "spreading_rate_m2_per_l", "pot_life_h", "induction_h", "voc_g_per_l", "solvent"}));
  EXPECT_EQ(keys_at(plan, "/finishes/clear/stage_clocks"), stages);
  EXPECT_EQ(keys_at(plan, "/finishes/clear/stages_h"), stages);
  EXPECT_EQ(keys_at(plan, "/finishes/clear/reference_air"), (Keys{"temperature_c", "relative_humidity"}));
  EXPECT_EQ(keys_at(plan, "/finishes/clear/limits"),
            (Keys{"min_c", "max_c", "max_relative_humidity", "dew_point_margin_k", "hold_h", "hold_above_c"}));
  EXPECT_EQ(keys_at(plan, "/finishes/clear/drying_clock"), (Keys{"law", "wet_bulb_share", "wet_bulb_share_range", "no_credit_below_c",
                                                                 "min_c", "max_c", "min_relative_humidity", "max_relative_humidity"}));
  EXPECT_EQ(keys_at(plan, "/finishes/clear/cure_clock"), (Keys{"law", "ea_kj_per_mol", "ea_range_kj_per_mol", "no_credit_below_c", "min_c",
                                                               "max_c", "min_relative_humidity", "max_relative_humidity", "starts"}));
}

TEST(Json, KeysOfPiecesAndEvents) {
  const job::Plan plan = sample::table();
  EXPECT_EQ(keys_at(plan, "/pieces/0"), (Keys{"id", "name", "due", "faces", "ready", "ready_safe", "ready_earliest", "slack_h", "late_h"}));
  EXPECT_EQ(keys_at(plan, "/pieces/0/faces/0"), (Keys{"id", "part", "face", "opposite", "material", "area_m2", "coats"}));
  EXPECT_EQ(keys_at(plan, "/pieces/0/ready"), hand_over);
  EXPECT_EQ(keys_at(plan, "/pieces/0/ready_safe"), hand_over);
  EXPECT_EQ(keys_at(plan, "/events/3"),
            (Keys{"id",        "kind",    "piece",    "faces",  "step",     "finish",   "coat",   "start",       "end",
                  "people",    "dust",    "delivers", "done",   "film",     "surfaces", "stages", "stages_safe", "stages_earliest",
                  "volume_ml", "support", "after",    "before", "cautions", "why"}));
  job::Plan with_vapour = plan;
  with_vapour.events[3].vapour = job::Vapour{Litres(0.1), Grams(80), CubicMetres(6), CubicMetresPerHour(12), Minutes(5)};
  const Keys whole = keys_at(with_vapour, "/events/3");
  EXPECT_EQ(Keys(whole.end() - 7, whole.end()),
            (Keys{"solvent_l", "solvent_g", "solvent_l_per_h", "solvent_g_per_h", "air_needed_m3", "air_needed_m3_per_h", "pauses_min"}));
  const Json coat = parsed(with_vapour)["events"][3];  // 6 m3 at 12 m3/h: two such coats an hour
  EXPECT_DOUBLE_EQ(coat["solvent_l_per_h"], 0.2);
  EXPECT_DOUBLE_EQ(coat["solvent_g_per_h"], 160);
  EXPECT_EQ(keys_at(plan, "/events/3/stages"), stages);
  EXPECT_EQ(keys_at(plan, "/events/3/after/0"), (Keys{"event", "stage", "earliest", "by"}));
  EXPECT_EQ(keys_at(plan, "/events/8/before/0"), (Keys{"event", "stage", "latest"}));
}

TEST(Json, Values) {
  const Json json = parsed(sample::table());
  EXPECT_EQ(json["schema"], "coatday-plan/3");
  EXPECT_EQ(json["from"], "2027-01-11T08:00:00-06:00");
  EXPECT_EQ(json["events"][3]["volume_ml"], 105.0);
  EXPECT_EQ(json["events"][3]["faces"], Json::array({"table/top/underside"}));
  EXPECT_EQ(json["events"][3]["after"][0]["stage"], "recoat");
  EXPECT_EQ(json["events"][5]["after"][0]["stage"], Json());
  EXPECT_EQ(json["events"][0]["stages"], Json());
  EXPECT_EQ(json["pieces"][0]["faces"][0]["opposite"], "table/top/underside");
  EXPECT_EQ(json["pieces"][0]["faces"][4]["opposite"], Json());
  EXPECT_EQ(json["pieces"][0]["slack_h"], 71.0);
  EXPECT_EQ(json["pieces"][0]["late_h"], 0.0);
  EXPECT_EQ(json["finishes"]["clear"]["stages_h"]["recoat"], 3.0);
  EXPECT_EQ(json["finishes"]["clear"]["stages_h"]["sand"], Json());
  EXPECT_EQ(json["finishes"]["clear"]["drying_clock"]["law"], "vapour deficit");
  EXPECT_EQ(json["finishes"]["stain"]["drying_clock"]["law"], "arrhenius");
  EXPECT_EQ(json["finishes"]["clear"]["cure_clock"]["starts"], "recoat");
  EXPECT_EQ(json["warnings"][0]["where"], "order.yaml:14:11");
}

TEST(Json, Result) {
  job::Plan plan = sample::table();  // ready 169 h after it starts, not before 168 h
  EXPECT_EQ(parsed(plan)["result"]["status"], "planned");
  EXPECT_EQ(parsed(plan)["result"]["proven"], false);
  EXPECT_EQ(parsed(plan)["result"]["could_end_sooner_h"], 1.0);
  EXPECT_EQ(parsed(plan)["result"]["late_h_total"], 0.0);
  plan.ready_bound = plan.ready;
  EXPECT_EQ(parsed(plan)["result"]["could_end_sooner_h"], 0.0);
  plan.pieces.front().slack = Hours(-30);
  EXPECT_EQ(parsed(plan)["result"]["late_h_total"], 30.0);
  job::Plan none = sample::impossible();
  EXPECT_EQ(parsed(none)["result"]["status"], "impossible");
  EXPECT_EQ(parsed(none)["result"]["ready_safe"], Json());
  EXPECT_EQ(parsed(none)["result"]["could_end_sooner_h"], Json());
  none.status = job::Status::not_found;
  EXPECT_EQ(parsed(none)["result"]["status"], "not found");
}

TEST(Json, AirIsAtMostAnHourApartAndCoversThePlan) {
  const job::Plan plan = sample::table();
  const Json air = parsed(plan)["air"];
  EXPECT_EQ(air.size(), static_cast<std::size_t>((plan.until - plan.from) / climate::AirSeries::step));
  EXPECT_EQ(air[0]["source"], "constant");
}

/// Another program takes start, time constant and air, and finds the same: each row's mean of the exponential, with figures from the text.
TEST(Json, SurfacesFollowFromTheAir) {
  job::Plan plan = sample::table();
  plan.surfaces[Hours(0.75)] = climate::Surface(plan.air, Hours(0.75), plan.air.begin());
  plan.events[3].bodies = {Hours(0), Hours(0.75)};
  const Json json = parsed(plan);
  EXPECT_EQ(json["events"][3]["surfaces"], (Json{"air", "45 min"}));
  const Json& surface = json["surfaces"]["45 min"];
  const double tau = surface["time_constant_h"];
  double body = surface["start_c"];
  ASSERT_EQ(surface["temperature_c"].size(), json["air"].size());
  for (std::size_t r = 0; r < json["air"].size(); ++r) {
    const double room = json["air"][r]["temperature_c"], left = std::exp(-0.5 / tau);
    EXPECT_NEAR(surface["temperature_c"][r].get<double>(), room + (body - room) * tau / 0.5 * (1 - left), 1e-9);
    body = room + (body - room) * left;
  }
}

TEST(Json, HostileTextIsStillJson) {
  const job::Plan plan = sample::hostile("\x1b[2J\n\"</script>\xff");
  const Json json = parsed(plan);
  EXPECT_EQ(json["pieces"][0]["name"], "\x1b[2J\n\"</script>\uFFFD");
  EXPECT_EQ(plan_json(plan, "1").find('\x1b'), std::string::npos);
}

TEST(Json, OneElementALine) {
  const std::string text = plan_json(sample::table(), "1");
  EXPECT_NE(text.find("\n    {\"id\":\"table/delivery\""), std::string::npos);
}

}  // namespace
}  // namespace coatday::report
