#pragma once
// How the movement of air changes the rates, beside its temperature and humidity. No law is known, so it is a plain ratio to the rate in the
// shop where the times of a record were found.

#include "finish/words.h"

namespace coatday::finish {

/// The rate of each clock is multiplied by these.
struct RateFactors {
  double drying = 1;
  double cure = 1;

  bool operator==(const RateFactors&) const = default;
};

/// The most that moving air can do, and the least that is known.
inline constexpr double most_movement = 2, least_movement = 0.5;

/// Oxidising films take their oxygen from the room: in a closed one, or stacked, both clocks run at half the rate. Films that dry
/// by evaporation dry in proportion to the movement of the air, 0.5 to 2, on the drying clock only. All of it is judgement.
[[nodiscard]] RateFactors rate_factors(Mechanism, bool closed, double air_movement);

}  // namespace coatday::finish
