// What the room's ventilation makes of the clocks' rates, worked out anew.

#include <set>

#include <fmt/core.h>

#include "checker/checks.h"

namespace coatday::checker {

namespace {

using finish::Mechanism;

/// Films that take up oxygen, on that clock.
bool oxidises(const finish::Product& product, finish::Clock clock) {
  return product.mechanism == Mechanism::oxidative || (product.mechanism == Mechanism::white_spirit && clock == finish::Clock::cure);
}

/// Films from which something has to leave; what is left of it later is not the air's doing.
bool evaporates(const finish::Product& product, finish::Clock clock) {
  const Mechanism by = product.mechanism;
  return clock == finish::Clock::drying && (by == Mechanism::water || by == Mechanism::alcohol || by == Mechanism::lacquer_thinner ||
                                            by == Mechanism::white_spirit || by == Mechanism::heat_cured);
}

double rate_factor(const finish::Product& product, finish::Clock clock, const shop::Ventilation& room) {
  if (oxidises(product, clock)) return room.closed ? 0.5 : 1;
  return evaporates(product, clock) ? room.air_movement : 1;
}

}  // namespace

void check_rate_factors(const PlanFacts& facts, Breaches& out) {
  std::set<const finish::Product*> seen;
  for (std::size_t i = 0; i < facts.events.size(); ++i) {
    const finish::Product* own = facts.events[i].product;
    if (own == nullptr || !seen.insert(own).second) continue;
    const finish::RateFactors ours{rate_factor(*own, finish::Clock::drying, facts.job.shop.ventilation),
                                   rate_factor(*own, finish::Clock::cure, facts.job.shop.ventilation)};
    const auto in_plan = facts.plan.products.find(own->id);
    const finish::RateFactors& said = in_plan == facts.plan.products.end() ? own->rate_factors : in_plan->second.rate_factors;
    if (said == ours && own->rate_factors == ours) continue;
    out.push_back(
        {"pace-differs", fmt::format("{}: the clocks run at {:.3g} and {:.3g} of their rate, in this room it is {:.3g} and {:.3g}", own->id,
                                     said.drying, said.cure, ours.drying, ours.cure)});
  }
}

}  // namespace coatday::checker
