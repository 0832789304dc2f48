#include "finish/product.h"

namespace coatday::finish {

std::optional<Law> Product::law(Clock clock) const {
  const std::optional<Law>& own = clock == Clock::drying ? drying_law : cure_law;
  return own ? own : default_law(mechanism, clock);
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

SquareMetresPerLitre theoretical_spreading_rate(double volume_solids, Micrometres dry_film) {
  return SquareMetresPerLitre(1000 * volume_solids / dry_film.value());
}

Micrometres wet_film(Micrometres dry_film, double volume_solids, double thinner_share) {
  return dry_film * ((1 + thinner_share) / volume_solids);
}

}  // namespace coatday::finish
