// Solvent vapour against the shop's exhaust, worked out anew.

#include <algorithm>

#include <fmt/core.h>

#include "checker/checks.h"
#include "finish/vapour.h"

namespace coatday::checker {

namespace {

using finish::Stage;

struct Wet {
  std::size_t event = 0;
  Instant from, until;
  double airflow = 0;  // m³/h
};

/// m³ of air for all of a coat's solvent: (100 - LEL) V / (LEL share), LEL in percent of the air, V m³ of vapour a litre.
double air_for(const finish::Product& product, double litres, double thinner, double share) {
  const finish::Solvent& solvent = finish::solvent_of(product);
  const double grams = litres * std::max(product.voc.value(), product.solvent_content.value_or(GramsPerLitre(0)).value());
  const double thinned = product.base == finish::Base::water ? 0 : litres * thinner;
  const double limit = 100 * solvent.lower_limit;
  return (grams / solvent.density.value() + thinned) * (100 - limit) * solvent.vapour.value() / (limit * share);
}

class VapourJudge {
 public:
  VapourJudge(const PlanFacts& facts, Breaches& out) : facts_(facts), out_(out) {}

  void run() {
    for (std::size_t i = 0; i < facts_.events.size(); ++i) {
      if (facts_.coat(i)) coat(i);
    }
    const auto& carried = facts_.job.shop.ventilation.airflow;
    if (!carried) return;
    for (const Wet& wet : wet_) together(wet, carried->value());
  }

 private:
  void coat(std::size_t i) {
    const job::Event& e = facts_.event(i);
    const finish::Product& product = *facts_.events[i].product;
    const double thinner = product.thinner_share + (facts_.events[i].step != nullptr ? facts_.events[i].step->thinner_share : 0);
    const double air = air_for(product, e.volume.value_or(Litres(0)).value(), thinner, facts_.job.shop.ventilation.limit);
    if (air <= 0) return;
    const Hours at_it = Hours(e.end - e.start) - e.set_up - e.clean_up - product.stand.value_or(Hours(0));
    const double airflow = air / std::max(at_it, Hours(grid)).count();
    constexpr double alike = 1.01;
    if (!e.vapour || e.vapour->air.value() * alike < air || e.vapour->airflow.value() * alike < airflow) {
      out_.push_back(
          {"vapour-understated", fmt::format("{}: its vapour takes {:.1f} m³ of air, {:.1f} m³/h", facts_.name(i), air, airflow)});
    }
    wet_.push_back({i, e.start, facts_.reached(i, {Stage::tack_free, Stage::handle, Stage::recoat}), airflow});
  }

  /// All that is wet when a coat begins; what is done cannot be undone.
  void together(const Wet& one, double carried) {
    if (facts_.event(one.event).done) return;
    double sum = 0;
    for (const Wet& other : wet_) {
      if (other.from <= one.from && one.from + rounding < other.until) sum += other.airflow;
    }
    constexpr double alike = 1.001;
    if (std::max(sum, one.airflow) <= carried * alike) return;
    out_.push_back({"too-little-air", fmt::format("{}: with what else is wet it takes {:.0f} m³/h, the exhaust carries {:.0f} m³/h",
                                                  facts_.name(one.event), sum, carried)});
  }

  const PlanFacts& facts_;
  Breaches& out_;
  std::vector<Wet> wet_;
};

}  // namespace

void check_vapour(const PlanFacts& facts, Breaches& out) { VapourJudge(facts, out).run(); }

}  // namespace coatday::checker
