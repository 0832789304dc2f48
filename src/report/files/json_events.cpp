#include "report/files/json_events.h"

#include <fmt/core.h>

#include <algorithm>

#include "report/files/json_finish.h"

namespace coatday::report {
namespace {

Json stage_word(const std::optional<finish::Stage>& stage) { return stage ? Json(stage_key(*stage)) : Json(); }

Json after_json(const job::Plan& plan, const job::Event& event) {
  Json out = Json::array();
  for (const job::AfterEvent& wait : event.after) {
    out.push_back({{"event", wait.event},
                   {"stage", stage_word(wait.stage)},
                   {"earliest", iso8601(wait.earliest, plan.shop.zone)},
                   {"by", wait.late ? "safe" : "expected"}});
  }
  return out;
}

Json before_json(const job::Plan& plan, const job::Event& event) {
  Json out = Json::array();
  for (const job::BeforeEvent& limit : event.before) {
    out.push_back({{"event", limit.event}, {"stage", stage_word(limit.stage)}, {"latest", iso8601(limit.latest, plan.shop.zone)}});
  }
  return out;
}

Json event_stages(const job::Plan& plan, const job::StageInstants& stages) {
  const auto& all = stages.values;
  if (std::none_of(all.begin(), all.end(), [](const auto& t) { return t.has_value(); })) return {};
  return stages_json(stages, [&plan](const std::optional<Instant>& t) { return instant_json(t, plan.shop.zone); });
}

/// Time constant 0: the room's air itself.
Json surface_keys(const job::Event& event) {
  Json out = Json::array();
  for (const Hours body : event.bodies) out.push_back(body > Hours(0) ? body_key(body) : "air");
  return out;
}

Json caution_texts(const job::Plan& plan, const job::Event& event) {
  Json out = Json::array();
  for (const std::string& key : event.cautions) {
    const auto found = plan.cautions.find(key);
    out.push_back(found == plan.cautions.end() ? key : found->second);
  }
  return out;
}

void add_vapour(Json& event, const job::Vapour& vapour) {
  event["solvent_l"] = vapour.solvent.value();
  event["solvent_g"] = vapour.mass.value();
  const double an_hour = vapour.air.value() > 0 ? vapour.airflow.value() / vapour.air.value() : 0;  // coats put on in an hour
  event["solvent_l_per_h"] = vapour.solvent.value() * an_hour;
  event["solvent_g_per_h"] = vapour.mass.value() * an_hour;
  event["air_needed_m3"] = vapour.air.value();
  event["air_needed_m3_per_h"] = vapour.airflow.value();
  event["pauses_min"] = vapour.pauses.count();
}

void add_film(Json& out, const job::Event& event) {
  out["wet_film_um"] = event.wet_film->value();
  out["drying_factor"] = event.drying.expected;
  out["drying_factor_slow"] = event.drying.slow;
  out["drying_factor_fast"] = event.drying.fast;
}

Json hand_over_json(const job::HandOver& ready, const Zone& zone) {
  return {{"handle", instant_json(ready.handle, zone)},
          {"wrap", instant_json(ready.wrap, zone)},
          {"deliver", instant_json(ready.deliver, zone)},
          {"careful_use", instant_json(ready.careful_use, zone)},
          {"full_use", instant_json(ready.full_use, zone)}};
}

Json face_json(const job::Plan& plan, const job::FaceEntry& face) {
  return {{"id", face.id},
          {"part", face.part},
          {"face", face.face},
          {"opposite", face.opposite ? Json(plan.faces.at(*face.opposite).id) : Json()},
          {"material", face.material},
          {"area_m2", face.area.value()},
          {"coats", face.coats}};
}

}  // namespace

std::string body_key(Hours time_constant) { return fmt::format("{:.0f} min", 60 * time_constant.count()); }

Json event_json(const job::Plan& plan, const job::Event& event) {
  const Zone& zone = plan.shop.zone;
  Json faces = Json::array();
  for (const std::size_t face : event.faces) faces.push_back(plan.faces.at(face).id);
  Json out{{"id", event.id},
           {"kind", job::word(event.kind)},
           {"piece", event.piece ? Json(plan.pieces.at(*event.piece).id) : Json()},
           {"faces", faces},
           {"step", text_or_null(event.step)},
           {"finish", text_or_null(event.product)},
           {"coat", event.coat > 0 ? Json(event.coat) : Json()},
           {"start", iso8601(event.start, zone)},
           {"end", iso8601(event.end, zone)},
           {"people", event.people},
           {"dust", event.dust == shop::Dust::none ? Json() : Json(event.dust == shop::Dust::light ? "light" : "heavy")},
           {"delivers", event.delivers},
           {"done", event.done},
           {"film", event.film},
           {"surfaces", surface_keys(event)},
           {"stages", event_stages(plan, event.stages.expected)},
           {"stages_safe", event_stages(plan, event.stages.slow)},
           {"stages_earliest", event_stages(plan, event.stages.fast)},
           {"volume_ml", event.volume ? Json(event.volume->value() * 1000) : Json()},
           {"support", event.support ? Json(piece::word(*event.support)) : Json()},
           {"after", after_json(plan, event)},
           {"before", before_json(plan, event)},
           {"cautions", caution_texts(plan, event)},
           {"why", event.why}};
  if (event.vapour) add_vapour(out, *event.vapour);
  if (event.wet_film) add_film(out, event);
  return out;
}

Json piece_json(const job::Plan& plan, std::size_t index) {
  const job::PieceResult& piece = plan.pieces[index];
  Json faces = Json::array();
  for (const job::FaceEntry& face : plan.faces) {
    if (face.piece == index) faces.push_back(face_json(plan, face));
  }
  const auto late = piece.slack ? std::optional<Hours>(std::max(Hours(0), -*piece.slack)) : std::nullopt;
  Json out{{"id", piece.id},
           {"name", piece.name},
           {"due", instant_json(piece.due, plan.shop.zone)},
           {"faces", faces},
           {"ready", hand_over_json(piece.ready.expected, plan.shop.zone)},
           {"ready_safe", hand_over_json(piece.ready.slow, plan.shop.zone)},
           {"ready_earliest", hand_over_json(piece.ready.fast, plan.shop.zone)},
           {"slack_h", hours_json(piece.slack)},
           {"late_h", hours_json(late)}};
  if (!piece.order.empty()) out["order"] = piece.order;
  return out;
}

}  // namespace coatday::report
