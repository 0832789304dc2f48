#include "finish/rate_factors.h"

#include <algorithm>

namespace coatday::finish {

RateFactors rate_factors(Mechanism mechanism, bool closed, double air_movement) {
  const double evaporating = std::clamp(air_movement, least_movement, most_movement);
  const double oxidising = closed ? 0.5 : 1;
  switch (mechanism) {
    case Mechanism::oxidative:
      return {oxidising, oxidising};
    case Mechanism::white_spirit:
      return {evaporating, oxidising};
    case Mechanism::water:
    case Mechanism::alcohol:
    case Mechanism::lacquer_thinner:
    case Mechanism::heat_cured:
      return {evaporating, 1};
    case Mechanism::epoxy:
    case Mechanism::polyurethane_two_part:
    case Mechanism::acid_cured:
    case Mechanism::moisture_cure:
    case Mechanism::cyanoacrylate:
      break;
  }
  return {};
}

}  // namespace coatday::finish
