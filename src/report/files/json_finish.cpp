#include "report/files/json_finish.h"

#include "finish/film.h"
#include "finish/product_keys.h"
#include "finish/vapour.h"

namespace coatday::report {
namespace {

Json solvent_json(const finish::Product& product) {
  if (finish::solvent_content(product) <= GramsPerLitre(0)) return {};
  const finish::Solvent& solvent = finish::solvent_of(product);
  return {{"name", solvent.name},
          {"assumed", !product.solvent.has_value()},
          {"content_g_per_l", finish::solvent_content(product).value()},
          {"density_g_per_l", solvent.density.value()},
          {"vapour_m3_per_l", solvent.vapour.value()},
          {"lower_explosive_limit", solvent.lower_limit},
          {"source", solvent.source}};
}

Json law_json(const finish::Law& law) {
  Json out{{"law", finish::word(law.kind)}};
  if (law.kind == finish::Law::Kind::arrhenius) out["ea_kj_per_mol"] = law.activation.value();
  if (law.kind == finish::Law::Kind::vapour_deficit) out["wet_bulb_share"] = law.wet_bulb_share;
  if (law.least < law.most) {
    const bool energy = law.kind == finish::Law::Kind::arrhenius;
    out[energy ? "ea_range_kj_per_mol" : "wet_bulb_share_range"] = {law.least, law.most};
  }
  out["no_credit_below_c"] = law.no_credit_below.value();
  out["min_c"] = law.coldest.value();
  out["max_c"] = law.hottest.value();
  out["min_relative_humidity"] = law.driest.value();
  out["max_relative_humidity"] = law.dampest.value();
  return out;
}

/// Only stages that several rows of the record give have a law of their own.
Json stage_laws_json(const finish::Product& product) {
  return stages_json(product.fits, [](const std::optional<finish::Fit>& fit) {
    if (!fit) return Json();
    Json out = law_json(fit->law);
    out["residual"] = fit->residual;
    return out;
  });
}

Json drying_json(const finish::Product& product) {
  const auto law = product.law(finish::Clock::drying);
  return law ? law_json(*law) : Json();
}

Json cure_json(const finish::Product& product) {
  const auto law = product.law(finish::Clock::cure);
  if (!law) return {};
  Json out = law_json(*law);
  out["starts"] = law->cure_starts_at_recoat ? "recoat" : "application";
  return out;
}

Json value_json(const std::string& text) { return text; }
Json value_json(bool holds) { return holds; }
Json value_json(double number) { return number; }
Json value_json(Hours span) { return span.count(); }
template <class Enum, class = std::enable_if_t<std::is_enum_v<Enum>>>
Json value_json(Enum choice) {
  return finish::word(choice);
}
template <class Quantity>
auto value_json(Quantity quantity) -> decltype(Json(quantity.value())) {
  return quantity.value();
}
template <class T>
Json value_json(const std::optional<T>& value) {
  return value ? value_json(*value) : Json();
}

void add_values(Json& into, const finish::Product& product, std::span<const finish::ProductKey> keys) {
  for (const finish::ProductKey& row : keys) {
    if (row.json.empty()) continue;
    finish::with_member(product, row.field, [&](const auto& value) { into[std::string(row.json)] = value_json(value); });
  }
}

}  // namespace

const char* stage_key(finish::Stage stage) {
  switch (stage) {
    case finish::Stage::tack_free:
      return "tack_free";
    case finish::Stage::handle:
      return "handle";
    case finish::Stage::sand:
      return "sand";
    case finish::Stage::recoat:
      return "recoat";
    case finish::Stage::recoat_close:
      return "recoat_close";
    case finish::Stage::pack:
      return "pack";
    case finish::Stage::light_use:
      return "light_use";
    case finish::Stage::full_cure:
      return "full_cure";
  }
  return "";
}

Json finish_json(const finish::Product& product) {
  const finish::StageRow& row = product.reference();
  // The list gives the order of the members. The table of keys then fills in the plain ones, and adds those that have no place here.
  Json out{{"name", product.name},
           {"base", finish::word(product.base)},
           {"role", finish::word(product.role)},
           {"mechanism", finish::word(product.mechanism)},
           {"reference_air", {{"temperature_c", row.air.temperature.value()}, {"relative_humidity", row.air.humidity.value()}}},
           {"stages_h", stages_json(row.hours, hours_json)},
           {"drying_clock", drying_json(product)},
           {"cure_clock", cure_json(product)},
           {"stage_clocks", stage_laws_json(product)},
           {"rate_factor", {{"drying", product.rate_factors.drying}, {"cure", product.rate_factors.cure}}},
           {"limits", Json::object()},
           {"times_for_wet_film_um", finish::film_of_times(product).value()},
           {"spreading_rate_m2_per_l", product.spreading_rate().value()},
           {"pot_life_h", nullptr},
           {"induction_h", product.two_part ? Json(product.two_part->induction.count()) : Json()},
           {"voc_g_per_l", nullptr},
           {"solvent", solvent_json(product)}};
  add_values(out, product, finish::product_keys());
  add_values(out["limits"], product, finish::limit_keys());
  add_values(out, product, finish::coverage_keys());
  return out;
}

}  // namespace coatday::report
