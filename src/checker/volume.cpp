// Litres: what each coat takes, what a pot allows, what is bought.

#include <algorithm>
#include <cmath>

#include <fmt/core.h>

#include "checker/checks.h"
#include "finish/coverage.h"

namespace coatday::checker {

namespace {

/// What leaves no film leaves the wood as thirsty for one as it was.
bool on_bare_wood(const PlanFacts& facts, std::size_t face, std::size_t coat) {
  if (!facts.faces[face].part->wood()) return false;
  const bool film = facts.events[coat].product->film;
  for (const std::size_t i : facts.faces[face].events) {
    if (i == coat) break;
    if (facts.coat(i) && (facts.events[i].product->film || !film)) return false;
  }
  return true;
}

/// Area / (spreading rate x transfer efficiency), more where a coat is the first on bare wood.
Litres takes(const PlanFacts& facts, std::size_t i) {
  const job::Event& e = facts.event(i);
  const finish::Product& product = *facts.events[i].product;
  double area = 0;
  for (const std::size_t f : e.faces) {
    const FaceFacts& face = facts.faces[f];
    const bool bare = on_bare_wood(facts, f, i);
    const double end_grain = face.face.face.end_grain ? product.end_grain_factor : 1;
    area += facts.plan.faces[f].area.value() * (bare ? product.first_coat_factor * end_grain : 1);
  }
  return Litres(area / (facts.film(i).square_metres_per_litre() * finish::transfer(*e.method).efficiency));
}

/// What the plan says of a film that its step asks for.
void check_film(const PlanFacts& facts, std::size_t i, Breaches& out) {
  const job::Event& e = facts.event(i);
  const Film own = facts.film(i);
  const auto off = [](double said, double ours) { return std::abs(said - ours) > 1e-6 * ours; };
  if (!own.known()) out.push_back({"film-unknown", fmt::format("{}: {:.0f} µm wet is beyond what is known", facts.name(i), own.wet())});
  const bool wrong = e.wet_film.has_value() != own.stated() || (e.wet_film && off(e.wet_film->value(), own.wet()));
  if (wrong || off(e.drying.expected, own.drying(Estimate::expected)) || off(e.drying.slow, own.drying(Estimate::slow)) ||
      off(e.drying.fast, own.drying(Estimate::fast))) {
    out.push_back({"film-differs",
                   fmt::format("{}: {:.0f} µm wet, drying times {:.3g}, by its step {:.0f} µm, times {:.3g}", facts.name(i),
                               e.wet_film.value_or(Micrometres(0)).value(), e.drying.expected, own.wet(), own.drying(Estimate::expected))});
  }
}

void check_volume(const PlanFacts& facts, std::size_t i, Breaches& out) {
  const job::Event& e = facts.event(i);
  const finish::Product& product = *facts.events[i].product;
  const auto& allowed = facts.job.shop.methods;
  const bool can = e.method && product.work_rates.count(*e.method) > 0 &&
                   std::find(allowed.begin(), allowed.end(), finish::word(*e.method)) != allowed.end();
  if (!can) {
    out.push_back({"method-unknown", facts.name(i) + ": not a way that both the product and the shop have"});
    return;
  }
  constexpr double alike = 0.01;
  const double litres = takes(facts, i).value();
  const double said = e.volume.value_or(Litres(0)).value();
  if (std::abs(said - litres) > alike * litres) {
    out.push_back(
        {"volume-differs", fmt::format("{}: {:.1f} ml, by area and spreading rate {:.1f} ml", facts.name(i), said * 1000, litres * 1000)});
  }
}

/// Every air that an event meets.
std::vector<climate::Air> airs_of(const PlanFacts& facts, const job::Event& e) {
  std::vector<climate::Air> airs;
  for (const climate::AirRow& row : facts.plan.air.rows()) {
    if (row.from < e.end && row.from + climate::AirSeries::step > e.start) airs.push_back(row.air);
  }
  return airs;
}

/// The clock of a mix: its cure, as far as the law goes in the cold, without end in the heat.
double mix_rate(const finish::Product& product, climate::Air air, bool in_the_pot) {
  const auto law = product.law(finish::Clock::cure);
  if (!law) return 1;
  if (in_the_pot) return finish::rate(*law, air, finish::reference_air, finish::Side::fast);
  air.temperature = std::max(air.temperature, law->no_credit_below);
  return finish::rate(*law, air, finish::reference_air);
}

/// Each mix stands until it is ready, as long as its air asks. Where the set-up is shared somebody else mixed it.
void check_induction(const PlanFacts& facts, std::size_t i, Breaches& out) {
  const finish::Product& product = *facts.events[i].product;
  const job::Event& e = facts.event(i);
  if (!product.pot_life || !product.two_part || e.done || e.set_up == Minutes(0)) return;
  for (const climate::Air& air : airs_of(facts, e)) {
    const double rate = mix_rate(product, air, false);
    const Hours stands = product.two_part->induction * std::max(1, e.mixes) / (rate > 0 ? rate : 1);
    if (stands <= Hours(e.set_up) + rounding) continue;
    out.push_back({"induction", fmt::format("{}: {} mixes stand {}, the set-up has {}", facts.name(i), std::max(1, e.mixes),
                                            format_span(stands), format_span(e.set_up))});
    return;
  }
}

/// A pot is in use from the first item to the last: fetching and placing in between count, the wait before wiping does not.
void check_pot_life(const PlanFacts& facts, std::size_t i, Breaches& out) {
  const finish::Product& product = *facts.events[i].product;
  const job::Event& e = facts.event(i);
  if (!product.pot_life || e.done) return;
  const Hours at_the_pot =
      Hours(e.end - e.start) - e.set_up - e.clean_up - product.stand.value_or(Hours(0)) - grid;  // its end is on the grid
  double fastest = 1e-9;
  for (const climate::Air& air : airs_of(facts, e)) fastest = std::max(fastest, mix_rate(product, air, true));
  const Hours lasts = *product.pot_life * std::max(1, e.mixes) / fastest;
  if (at_the_pot <= lasts + rounding) return;
  out.push_back({"pot-life", fmt::format("{}: {} mixes last {}, the coat takes {}", facts.name(i), std::max(1, e.mixes), format_span(lasts),
                                         format_span(at_the_pot))});
}

class PurchaseJudge {
 public:
  PurchaseJudge(const PlanFacts& facts, Breaches& out) : facts_(facts), out_(out) {
    for (std::size_t i = 0; i < facts.events.size(); ++i) {
      const job::Event& e = facts.event(i);
      if (facts.coat(i) && !e.done) used_[facts.events[i].product] += e.volume.value_or(Litres(0));
    }
  }

  void run() {
    for (const auto& [product, litres] : used_) used(*product, litres);
    for (const job::Purchase& row : facts_.plan.purchase) sums(row);
  }

 private:
  void report(std::string code, const job::Purchase& row, const std::string& message) {
    out_.push_back({std::move(code), fmt::format("{}{}{}: {}", row.product, row.part.empty() ? "" : " ", row.part, message)});
  }

  /// Of a two-part product each part has its row, or one row stands for both.
  void used(const finish::Product& product, Litres litres) {
    double covered = 0;
    for (const job::Purchase& row : facts_.plan.purchase) {
      if (row.product != product.id) continue;
      const double share = share_of(product, row.part);
      covered += share;
      constexpr double alike = 0.01;
      if (row.need.value() >= litres.value() * share * (1 - alike)) continue;
      report("need-too-small", row, fmt::format("needs {:.3f} l, the coats take {:.3f} l", row.need.value(), litres.value() * share));
    }
    constexpr double all = 1 - 1e-9;
    if (covered < all) out_.push_back({"purchase-missing", product.id + " is used, but not in the purchase"});
  }

  static double share_of(const finish::Product& product, const std::string& part) {
    if (part.empty() || !product.two_part) return 1;
    const double sum = product.two_part->base_parts + product.two_part->hardener_parts;
    return (part == "hardener" ? product.two_part->hardener_parts : product.two_part->base_parts) / sum;
  }

  /// More than nineteen twentieths would be used, so there is a spare can; else there is none.
  void tight(const job::Purchase& row, bool sold_in_cans, double have) {
    constexpr double inexact = 1e-6, most_used = 0.95;
    const double need = row.need.value(), before = have - row.spare.value_or(Litres(0)).value();
    if (sold_in_cans && !row.spare && need <= have && need > most_used * before + inexact)
      report("purchase-tight", row, fmt::format("{:.3f} l leave less than a twentieth over a need of {:.3f} l", have, need));
    if (row.spare && need < most_used * before - inexact)
      report("purchase-tight", row, "it has a spare can, and enough is left without it");
  }

  void sums(const job::Purchase& row) {
    constexpr double inexact = 1e-6;  // litres
    double bought = 0;
    for (const job::Bought& cans : row.buy) bought += cans.size.value() * cans.count;
    const double have = row.on_hand.value() + bought;
    const finish::Product* product = facts_.job.catalogue.product(row.product);
    const bool sold_in_cans = product != nullptr && !product->cans.empty();  // else the user sees to it
    if (sold_in_cans && have + inexact < row.need.value()) {
      report("purchase-short", row, fmt::format("{:.3f} l for a need of {:.3f} l", have, row.need.value()));
    }
    tight(row, sold_in_cans, have);
    if (std::abs(row.left_over.value() - std::max(0.0, have - row.need.value())) > 1e-3) {
      report("purchase-differs", row, fmt::format("{:.3f} l are not what is left over", row.left_over.value()));
    }
    if (!row.part.empty() || product == nullptr) return;
    const LocalDay day = day_of(facts_.job.shop.zone.to_local(facts_.plan.from));
    const Litres usable = shop::usable_stock(facts_.job.shop, row.product, day, product->shelf_life_opened);
    if (row.on_hand.value() > usable.value() + 1e-6) {
      report("stock-differs", row, fmt::format("{:.3f} l on hand, the shelf has {:.3f} l", row.on_hand.value(), usable.value()));
    }
  }

  const PlanFacts& facts_;
  Breaches& out_;
  std::map<const finish::Product*, Litres> used_;
};

}  // namespace

void check_volumes(const PlanFacts& facts, Breaches& out) {
  for (std::size_t i = 0; i < facts.events.size(); ++i) {
    if (!facts.coat(i)) continue;
    if (!facts.event(i).done) check_volume(facts, i, out);
    check_film(facts, i, out);
    check_pot_life(facts, i, out);
    check_induction(facts, i, out);
  }
}

void check_purchase(const PlanFacts& facts, Breaches& out) { PurchaseJudge(facts, out).run(); }

}  // namespace coatday::checker
