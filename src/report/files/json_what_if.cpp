#include "report/files/json_what_if.h"

#include "job/compare.h"
#include "report/files/json_events.h"

namespace coatday::report {
namespace {

Json side_json(const job::Plan& plan) {
  const job::Cost cost = job::cost_of(plan);
  Json pieces = Json::array();
  for (std::size_t i = 0; i < plan.pieces.size(); ++i) {
    Json piece = piece_json(plan, i);
    piece.erase("faces");
    pieces.push_back(piece);
  }
  Json purchase = Json::array();
  for (const job::Purchase& row : plan.purchase) purchase.push_back(purchase_json(plan, row));
  return {{"from", iso8601(plan.from, plan.shop.zone)},
          {"pieces", pieces},
          {"purchase", purchase},
          {"cost", cost.sum.value() > 0 ? Json(cost.sum.value()) : Json()},
          {"unpriced", cost.unpriced},
          {"result", result_json(plan)}};
}

Json heat_json(const std::optional<job::Heat>& heat) {
  if (!heat) return nullptr;
  return {{"energy_kwh", heat->kilowatt_hours}, {"cost", heat->cost ? Json(heat->cost->value()) : Json()}};
}

Json cans_json(const std::vector<job::Bought>& cans) {
  Json out = Json::array();
  for (const job::Bought& can : cans) out.push_back({{"size_l", can.size.value()}, {"count", can.count}});
  return out;
}

Json head(const char* schema, std::string_view version) {
  return {{"schema", schema}, {"program", {{"name", "coatday"}, {"version", version}}}};
}

std::string written(const Json& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n"; }

}  // namespace

std::string what_if_json(const job::Plan& before, const job::Plan& after, const std::vector<std::string>& set, std::string_view version) {
  Json out = head("coatday-what-if/3", version);
  out["set"] = set;
  out["before"] = side_json(before);
  out["after"] = side_json(after);
  const job::Comparison found = job::compare(before, after);
  const bool planned = before.status == job::Status::planned && after.status == job::Status::planned;
  out["heat"] = !planned ? Json() : Json{{"warmer_k_h", found.warmer},           {"cooler_k_h", found.cooler},
                                         {"hours", found.differs.count()},       {"before", heat_json(found.heat_before)},
                                         {"after", heat_json(found.heat_after)}, {"until", iso8601(found.air_until, after.shop.zone)}};
  Json& moved = out["moved"] = Json::array();
  for (const job::Move& move : found.moved) {
    const job::Event& event = after.events.at(move.event);
    moved.push_back({{"event", event.id}, {"was", iso8601(move.was, after.shop.zone)}, {"start", iso8601(event.start, after.shop.zone)}});
  }
  out["coats"] = {{"stayed", found.stayed}, {"added", found.added}, {"gone", found.gone}};
  return written(out);
}

Json advice_json(const job::Plan& plan, const job::Advice& advice) {
  const Zone& zone = plan.shop.zone;
  Json suggestions = Json::array();
  for (const job::Suggestion& help : advice.suggestions) {
    Json buys = Json::array();
    for (const job::BuyChange& change : help.buys)
      buys.push_back({{"finish", change.product}, {"name", change.name}, {"was", cans_json(change.was)}, {"now", cans_json(change.now)}});
    suggestions.push_back({{"change", help.words},
                           {"set", help.set},
                           {"start", iso8601(help.start, zone)},
                           {"ready_safe", iso8601(help.ready, zone)},
                           {"sooner_h", help.sooner.count()},
                           {"buy", buys},
                           {"dearer", help.dearer ? Json(help.dearer->value()) : Json()},
                           {"heat_kwh", help.heat ? Json(help.heat->kilowatt_hours) : Json()},
                           {"heat_dearer", help.heat && help.heat->cost ? Json(help.heat->cost->value()) : Json()}});
  }
  return {{"tried", !advice.too_large && advice.waits_for_air.has_value()},
          {"waits_for_air_h", hours_json(advice.waits_for_air)},
          {"cut_off", advice.cut_off},
          {"ready_after_longer_search", instant_json(advice.searched, zone)},
          {"suggestions", suggestions}};
}

std::string advice_json(const job::Plan& plan, const job::Advice& advice, std::string_view version) {
  Json out = head("coatday-advice/3", version);
  out["ready_safe"] = instant_json(plan.ready, plan.shop.zone);
  out.update(advice_json(plan, advice));
  out["result"] = result_json(plan);
  return written(out);
}

}  // namespace coatday::report
