#include "report/files/json_quote.h"
#include "report/files/json_parts.h"

namespace coatday::report {
namespace {

Json money_json(const std::optional<Money>& m) { return m ? Json(m->value()) : Json(); }

Json hands_json(const job::Quote& quote) {
  Json kinds = Json::array();
  for (const job::Hands& hands : quote.hands) kinds.push_back({{"what", hands.what}, {"hours", hands.hours.count()}});
  return {{"hours", quote.hours.count()}, {"kinds", kinds}};
}

Json material_json(const job::Material& material) {
  Json cans = Json::array();
  for (const job::Bought& can : material.buy)
    cans.push_back({{"size_l", can.size.value()}, {"count", can.count}, {"price", money_json(can.price)}});
  Json out{{"finish", material.product},
           {"buy", cans},
           {"spare_l", material.spare ? Json(material.spare->value()) : Json()},
           {"from_shelf_l", material.from_shelf.value()},
           {"cost", money_json(material.cost)}};
  if (!material.part.empty()) out["part"] = material.part;
  return out;
}

Json money_of(const job::Plan& plan, const job::Quote& quote, const shop::Rates& rates) {
  return {{"currency", text_or_null(plan.shop.currency)},
          {"hour", money_json(rates.hour)},
          {"material_markup", rates.material_markup ? Json(*rates.material_markup) : Json()},
          {"work", money_json(quote.work)},
          {"materials", quote.materials_cost.value()},
          {"markup", money_json(quote.markup)},
          {"without_price", quote.unpriced},
          {"price", money_json(quote.price)}};
}

}  // namespace

std::string quote_json(const job::Plan& plan, const job::Quote& quote, const shop::Rates& rates, const std::string& order,
                       std::string_view version) {
  const Zone& zone = plan.shop.zone;
  Json out{{"schema", "coatday-quote/1"}, {"program", {{"name", "coatday"}, {"version", version}}}, {"order", order}};
  out["begins"] = instant_json(quote.begins, zone);
  out["last_coat"] = instant_json(quote.last_coat, zone);
  out["expected"] = instant_json(quote.expected, zone);
  out["promise"] = instant_json(quote.promise, zone);
  out["days"] = {{"hands_on", quote.days.hands_on}, {"waiting", quote.days.waiting}, {"closed", quote.days.closed}};
  out["hands"] = hands_json(quote);
  Json& materials = out["materials"] = Json::array();
  for (const job::Material& material : quote.materials) materials.push_back(material_json(material));
  out["money"] = money_of(plan, quote, rates);
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace coatday::report
