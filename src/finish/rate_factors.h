#pragma once
// What moves the air over a coat, beside its temperature and humidity. No law is known: it enters as a ratio of rates alone, against the shop
// in which a record's times were found.

#include "finish/words.h"

namespace coatday::finish {

/// By which the rate of each clock is multiplied.
struct RateFactors {
  double drying = 1;
  double cure = 1;

  bool operator==(const RateFactors&) const = default;
};

/// The most that moving air can do, and the least that is known.
inline constexpr double most_movement = 2, least_movement = 0.5;

/// Oxidising films take their oxygen from the room: in a closed one, or stacked, they go on at half the rate, both clocks. Films that dry
/// by evaporation do so in proportion to the air's movement, 0.5 to 2, the drying clock alone. All of it judgement.
[[nodiscard]] RateFactors rate_factors(Mechanism, bool closed, double air_movement);

}  // namespace coatday::finish
