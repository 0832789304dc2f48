#include "report/files/json.h"

#include <algorithm>

#include "job/fresh_air.h"
#include "report/files/json_events.h"
#include "report/files/json_finish.h"
#include "report/words.h"

namespace coatday::report {

Json purchase_json(const job::Plan& plan, const job::Purchase& row) {
  Json cans = Json::array();
  for (const job::Bought& can : row.buy) {
    cans.push_back({{"size_l", can.size.value()}, {"count", can.count}, {"price", can.price ? Json(can.price->value()) : Json()}});
  }
  Json out{{"finish", row.product},
           {"area_m2", row.area.value()},
           {"need_l", row.need.value()},
           {"on_hand_l", row.on_hand.value()},
           {"buy", cans},
           {"left_over_l", row.left_over.value()},
           {"spare_l", row.spare ? Json(row.spare->value()) : Json()},
           {"cost", row.cost ? Json(row.cost->value()) : Json()},
           {"currency", text_or_null(plan.shop.currency)}};
  if (!row.part.empty()) out["part"] = row.part;  // two rows of one product otherwise look alike
  return out;
}

Json finding_json(const job::Finding& finding) {
  constexpr const char* severities[] = {"note", "warning", "error"};
  const Location& at = finding.where;
  const std::string where = at.line > 0 ? at.file + ":" + std::to_string(at.line) + ":" + std::to_string(at.column) : finding.subject;
  return {{"code", finding.code},
          {"severity", severities[static_cast<std::size_t>(finding.severity)]},
          {"message", finding.message},
          {"where", text_or_null(where)}};
}

Json result_json(const job::Plan& plan) {
  const char* status = plan.status == job::Status::impossible  ? "impossible"
                       : plan.status == job::Status::not_found ? "not found"
                                                               : "planned";
  const bool bounded = plan.status == job::Status::planned && plan.ready && plan.ready_bound;
  Hours late(0);
  int days_late = 0;
  for (const job::PieceResult& piece : plan.pieces) late += std::max(Hours(0), -piece.slack.value_or(Hours(0)));
  for (const job::PieceResult& piece : plan.pieces) days_late += job::days_late(plan, piece);
  Json out{{"status", status},
           {"proven", plan.proven},
           {"search_cut_off", plan.search_cut_off},
           {"ready_safe", instant_json(plan.status == job::Status::planned ? plan.ready : std::nullopt, plan.shop.zone)},
           {"could_end_sooner_h", bounded ? Json(Hours(*plan.ready - *plan.ready_bound).count()) : Json()},
           {"late_h_total", late.count()},
           {"late_days_total", days_late},
           {"late_days_at_least", std::min(days_late, plan.days_late_bound)},
           {"seconds", std::chrono::duration<double>(plan.seconds_spent).count()}};
  if (!plan.contradiction.empty()) out["contradiction"] = plan.contradiction;
  if (!plan.in_short.empty()) out["in_short"] = plan.in_short;
  if (plan.help_cut_off) out["help_cut_off"] = true;
  for (const job::Proposal& help : plan.proposals) {
    out["proposals"].push_back({{"change", help.words}, {"set", help.set}, {"ready_safe", instant_json(help.ready, plan.shop.zone)}});
  }
  return out;
}

namespace {

Json ventilation_json(const job::Plan& plan) {
  const shop::Ventilation& shop = plan.shop.ventilation;
  const auto most = job::most_vapour(plan);
  return {{"airflow_m3_per_h", shop.airflow ? Json(shop.airflow->value()) : Json()},
          {"share_of_lower_explosive_limit", shop.limit},
          {"room", shop.closed ? "closed" : "open"},
          {"air_movement", shop.air_movement},
          {"most_air_needed_m3_per_h", most ? Json(most->airflow.value()) : Json()},
          {"most_air_needed_at", most ? Json(iso8601(most->at, plan.shop.zone)) : Json()},
          {"permit", false}};
}

Json shop_json(const job::Plan& plan) {
  Json working = Json::array();
  const Zone& zone = plan.shop.zone;
  for (const shop::WorkingTime& w : plan.working) working.push_back({{"start", iso8601(w.begin, zone)}, {"end", iso8601(w.end, zone)}});
  return {
      {"name", plan.shop.name},
      {"timezone", zone.name()},
      {"units", plan.shop.units == Units::us ? "us" : "metric"},
      {"people", plan.shop.people},
      {"dust_settles_min", {{"light", plan.shop.light_dust_settles.count() * 60}, {"heavy", plan.shop.heavy_dust_settles.count() * 60}}},
      {"ventilation", ventilation_json(plan)},
      {"working", working}};
}

Json air_json(const job::Plan& plan) {
  Json out = Json::array();
  for (const climate::AirRow& row : plan.air.rows()) {
    out.push_back({{"time", iso8601(row.from, plan.shop.zone)},
                   {"temperature_c", row.air.temperature.value()},
                   {"relative_humidity", row.air.humidity.value()},
                   {"dew_point_c", row.dew_point.value()},
                   {"source", climate::word(row.origin)}});
  }
  return out;
}

/// What lags behind the air, as rows of the air: their mean over each row, and where they start.
Json surfaces_json(const job::Plan& plan) {
  Json out = Json::object();
  for (const auto& [time_constant, surface] : plan.surfaces) {
    Json temperatures = Json::array();
    for (const climate::AirRow& row : surface.air().rows()) temperatures.push_back(row.air.temperature.value());
    out[body_key(time_constant)] = {
        {"time_constant_h", time_constant.count()}, {"start_c", surface.at_row(0).value()}, {"temperature_c", std::move(temperatures)}};
  }
  return out;
}

Json places_json(const job::Plan& plan) {
  Json out = Json::array();
  for (const job::PlaceUse& use : plan.places) {
    const std::string stretch = stretch_text(plan, use);
    int parts = 0;
    for (const shop::Laid& row : use.laid) parts += row.count;
    out.push_back({{"event", plan.events.at(use.event).id},
                   {"place", stretch.empty() ? use.place : use.place + " " + stretch},
                   {"parts", parts},
                   {"from", iso8601(use.from, plan.shop.zone)},
                   {"until", iso8601(use.until, plan.shop.zone)}});
    if (use.then)
      out.back()["then"] = {{"aside_from", iso8601(use.then->from, plan.shop.zone)}, {"until", iso8601(use.then->until, plan.shop.zone)}};
  }
  return out;
}

Json visits_json(const job::Plan& plan) {
  Json out = Json::array();
  for (const job::Visit& visit : plan.visits) {
    Json events = Json::array();
    for (const std::size_t event : visit.events) events.push_back(plan.events.at(event).id);
    out.push_back({{"from", iso8601(visit.from, plan.shop.zone)},
                   {"until", iso8601(visit.until, plan.shop.zone)},
                   {"work_min", visit.work.count()},
                   {"events", std::move(events)}});
  }
  return out;
}

Json time_spent_json(const job::Plan& plan) {
  Json out = Json::array();
  for (const job::TimeSpent& spent : plan.time_spent) {
    Json causes = Json::array();
    for (const job::TimeShare& share : spent.shares) {
      Json cause{{"cause", job::word(share.cause)}, {"h", share.time.count()}};
      if (!share.place.empty()) cause["place"] = share.place;
      if (share.cause == job::TimeCause::drying) cause["slower_air_h"] = share.slower.count();
      causes.push_back(std::move(cause));
    }
    Json order{{"h", spent.all.count()}, {"causes", std::move(causes)}};
    if (!spent.order.empty()) order["order"] = spent.order;
    out.push_back(std::move(order));
  }
  return out;
}

Json moved_json(const job::Plan& plan) {
  Json out = Json::array();
  for (const job::Move& move : plan.changes->moved) {
    const job::Event& event = plan.events.at(move.event);
    out.push_back({{"event", event.id}, {"was", iso8601(move.was, plan.shop.zone)}, {"start", iso8601(event.start, plan.shop.zone)}});
  }
  return out;
}

Json document(const job::Plan& plan, std::string_view version, const job::Advice& advice) {
  Json out{{"schema", "coatday-plan/3"},
           {"program", {{"name", "coatday"}, {"version", version}}},
           {"from", iso8601(plan.from, plan.shop.zone)},
           {"shop", shop_json(plan)},
           {"air", air_json(plan)}};
  out["surfaces"] = surfaces_json(plan);
  Json& finishes = out["finishes"] = Json::object();
  for (const auto& [id, product] : plan.products) finishes[id] = finish_json(product);
  Json& pieces = out["pieces"] = Json::array();
  for (std::size_t i = 0; i < plan.pieces.size(); ++i) pieces.push_back(piece_json(plan, i));
  Json& events = out["events"] = Json::array();
  for (const job::Event& event : plan.events) events.push_back(event_json(plan, event));
  out["places"] = places_json(plan);
  out["visits"] = visits_json(plan);
  Json& purchase = out["purchase"] = Json::array();
  for (const job::Purchase& row : plan.purchase) purchase.push_back(purchase_json(plan, row));
  Json& warnings = out["warnings"] = Json::array();
  for (const job::Finding& finding : plan.findings) warnings.push_back(finding_json(finding));
  out["time_spent"] = time_spent_json(plan);
  if (plan.changes) out["moved"] = moved_json(plan);
  out["advice"] = advice_json(plan, advice);
  out["result"] = result_json(plan);
  return out;
}

// Invalid UTF-8 in the user's text becomes U+FFFD.
std::string line(const Json& value) { return value.dump(-1, ' ', false, Json::error_handler_t::replace); }

std::string array_lines(const Json& array) {
  std::string out = "[";
  for (std::size_t i = 0; i < array.size(); ++i) out += (i == 0 ? "\n    " : ",\n    ") + line(array[i]);
  return out + "\n  ]";
}

}  // namespace

std::string plan_json(const job::Plan& plan, std::string_view version, const job::Advice& advice) {
  std::string out = "{";
  const Json whole = document(plan, version, advice);
  for (const auto& [key, value] : whole.items()) {
    out += (out.size() == 1 ? "\n  " : ",\n  ") + line(key) + ": ";
    out += value.is_array() && !value.empty() ? array_lines(value) : line(value);
  }
  return out + "\n}\n";
}

}  // namespace coatday::report
