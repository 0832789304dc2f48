#include "finish/product.h"

#include <algorithm>

namespace coatday::finish {

namespace {

std::optional<Law> at_rate(std::optional<Law> law, Clock clock, const RateFactors& factors) {
  if (law) law->rate_factor = clock == Clock::drying ? factors.drying : factors.cure;
  return law;
}

}  // namespace

std::optional<Law> Product::law(Clock clock) const {
  const std::optional<Law>& own = clock == Clock::drying ? drying_law : cure_law;
  return at_rate(own ? own : default_law(mechanism, clock), clock, rate_factors);
}

std::optional<Law> Product::law(Stage stage) const {
  return fits[stage] ? at_rate(fits[stage]->law, clock_of(stage), rate_factors) : law(clock_of(stage));
}

SquareMetresPerLitre Product::spreading_rate() const {
  if (stated_spreading_rate) return *stated_spreading_rate;
  return theoretical_spreading_rate(volume_solids.value(), dry_film.value());
}

std::optional<Hours> pot_life(const Product& product, const climate::Air& air) {
  const std::optional<Law> law = product.law(Clock::cure);
  if (!product.pot_life || !law) return product.pot_life;
  return *product.pot_life / rate(*law, air, reference_air, Side::fast);
}

Hours induction(const Product& product, const climate::Air& air) {
  if (!product.two_part || product.two_part->induction <= Hours(0)) return Hours(0);
  const std::optional<Law> law = product.law(Clock::cure);
  if (!law) return product.two_part->induction;
  const climate::Air floored{std::max(air.temperature, law->no_credit_below), air.humidity};
  const double k = rate(*law, floored, reference_air);
  return product.two_part->induction / (k > 0 ? k : 1);
}

SquareMetresPerLitre theoretical_spreading_rate(double volume_solids, Micrometres dry_film) {
  return SquareMetresPerLitre(1000 * volume_solids / dry_film.value());
}

Micrometres wet_film(Micrometres dry_film, double volume_solids, double thinner_share) {
  return dry_film * ((1 + thinner_share) / volume_solids);
}

}  // namespace coatday::finish
