#include "report/sections/vapour.h"

#include <fmt/core.h>

#include <set>

#include "finish/vapour.h"
#include "job/fresh_air.h"

namespace coatday::report {
namespace {

std::string mass_text(Grams mass, Units units) {
  constexpr double ounce = 28.349523125, pound = 16 * ounce;  // g, avoirdupois
  struct Unit {
    double size;
    const char* name;
  };
  const Unit unit = units == Units::us ? (mass.value() < 2 * pound ? Unit{ounce, "oz"} : Unit{pound, "lb"})
                                       : (mass.value() < 1000 ? Unit{1, "g"} : Unit{1000, "kg"});
  const double amount = mass.value() / unit.size;
  return fmt::format("{:.{}f} {}", amount, amount < 10 ? 1 : 0, unit.name);
}

/// What a coat gives off in an hour while it is put on.
struct PerHour {
  Litres solvent;
  Grams mass;
};
PerHour per_hour(const job::Vapour& vapour) {
  const double coats = vapour.air.value() > 0 ? vapour.airflow.value() / vapour.air.value() : 0;
  return {vapour.solvent * coats, vapour.mass * coats};
}

std::string per_hour_text(const PerHour& rate, Units units) {
  return unbroken(volume_text(rate.solvent, units) + "/h") + ", " + unbroken(mass_text(rate.mass, units) + "/h");
}

std::string most_text(const job::Plan& plan, const job::MostVapour& most, const Texts& texts) {
  std::set<std::string> names;
  PerHour all{};
  for (const std::size_t i : most.events) {
    names.insert(fmt::format("{} ({})", plan.events[i].name, plan.events[i].load_name));
    const PerHour one = per_hour(*plan.events[i].vapour);
    all = {all.solvent + one.solvent, all.mass + one.mass};
  }
  return fmt::format("{} on {}, for {} of solvent: {}", unbroken(format_airflow(most.airflow, texts.units)), texts.instant(most.at),
                     per_hour_text(all, texts.units), listed({names.begin(), names.end()}));
}

std::string shop_text(const shop::Ventilation& shop, Units units) {
  if (shop.airflow) return unbroken(format_exhaust(*shop.airflow, units)) + " is stated; coats are spread over time to stay within it";
  std::string words = "no airflow is stated in the shop file (ventilation: {airflow: ...}), so nothing is compared";
  return shop.closed ? words + "; a closed room brings in no fresh air: open it, or exhaust it, while solvent is about" : words;
}

std::string limit_text(double share) {
  std::string words = fmt::format("under {:.3g} % of the lower explosive limit", 100 * share);
  if (share == finish::federal_limit)
    words += " (29 CFR 1910.94(c)(6)(ii): \"at least 25 percent of the lower explosive limit\", from memory)";
  if (share == finish::california_limit) words += " (8 CCR 5153(d): \"less than 20 percent of their lower explosive limit\")";
  return words;
}

std::string solvents_text(const job::Plan& plan) {
  std::set<std::string> used;
  for (const job::Event& event : plan.events) {
    if (event.vapour) used.insert(event.product);
  }
  std::vector<std::string> words;
  for (const std::string& id : used) {
    const finish::Product& product = plan.products.at(id);
    words.push_back(fmt::format("{} as {}{}", product.name, finish::solvent_of(product).name, product.solvent ? "" : " (assumed)"));
  }
  return listed(words);
}

}  // namespace

std::string vapour_text(const job::Event& event, Units units) {
  if (!event.vapour) return "";
  const job::Vapour& vapour = *event.vapour;
  std::string words = fmt::format("{} of solvent weighing {} ({}): {} of fresh air, an estimate, not a permit",
                                  volume_text(vapour.solvent, units), unbroken(mass_text(vapour.mass, units)),
                                  per_hour_text(per_hour(vapour), units), unbroken(format_airflow(vapour.airflow, units)));
  if (vapour.pauses > Minutes(0)) words += fmt::format("; {} of it are pauses for the exhaust", unbroken(format_span(vapour.pauses)));
  return words;
}

std::optional<Section> vapour(const job::Plan& plan, const Texts& texts) {
  const auto most = plan.status == job::Status::planned ? job::most_vapour(plan) : std::nullopt;
  if (!most) return std::nullopt;
  Facts facts{{{"most air", most_text(plan, *most, texts)},
               {"exhaust", shop_text(plan.shop.ventilation, texts.units)},
               {"calculated", "air to stay " + limit_text(plan.shop.ventilation.limit) +
                                  ", as if a coat's solvent left while it is put on; it counts until it is tack-free"},
               {"solvents", solvents_text(plan)}}};
  List caution{List::Kind::cautions,
               {"An estimate, not a permit: fire code, label and safety data sheet count. Even below the limit flame, heaters and "
                "sparks stay out. Whether the air is fit to breathe (time-weighted exposure limits) is not judged."}};
  return Section{"vapour", "Solvent vapour", {}, {facts, caution}};
}

}  // namespace coatday::report
