#pragma once
// What lies in a room's air lags behind it: wood, steel, a can. The body is lumped, of one temperature throughout: tau dT/dt = T_air - T.
// A slab's inside lags more than its surface (Biot number about 0.5 for 22 mm of wood), so for the surface this is the slow side.
// Source: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, ch. 5, the lumped capacitance method (from memory).

#include "climate/air.h"

namespace coatday::climate {

/// rho c V/A R: `capacity` rho c in J/(m3 K), `depth` V/A, the volume behind a unit of surface. R is the surface resistance indoors for heat
/// that flows sideways, 0.13 m2K/W; upwards it is 0.10, downwards 0.17, and a board on points takes heat both ways. Radiation is in it, a
/// fan is not. Source: ISO 6946 (table of surface resistances, as building physics texts quote it).
[[nodiscard]] Hours lumped_time_constant(double capacity, Metres depth);

/// To the minute, so that nearly equal bodies share their temperatures. Not coarser, because neither more lag nor less is always on the safe
/// side. Half a minute of lag is 0.02 K where the air changes by 2 K an hour.
[[nodiscard]] Hours whole_minutes(Hours);

/// How far the air must be known before the first moment at which a body's temperature is needed: 10 time constants, and a night at least.
/// After that only 1/20000 of the starting difference is left, so the start does not matter.
[[nodiscard]] Hours settling(Hours time_constant);

/// The temperature of a body that is always in the room.
class Surface {
 public:
  Surface() = default;
  /// Starts in equilibrium with the first row; what is known of it begins at the row of `from`, so the air should reach back by
  /// settling(). A time constant of 0 follows the air.
  Surface(const AirSeries& air, Hours time_constant, Instant from);
  /// The same with the vapour pressure of each row of the air, which all surfaces in it share.
  Surface(const AirSeries& air, const std::vector<Pascals>& vapour, Hours time_constant, Instant from);

  [[nodiscard]] Hours time_constant() const { return time_constant_; }
  /// The room's air brought to the surface's temperature, row by row the mean over the row, at unchanged vapour pressure and dew point.
  /// Its humidity is capped at 1, where water condenses.
  [[nodiscard]] const AirSeries& air() const { return air_; }
  /// At a row's start, or at the end of the last; exact.
  [[nodiscard]] Celsius at_row(std::size_t row) const { return at_rows_[row]; }

  /// When a body like this, brought in at `t` from a place of that temperature, is within half a degree of this one: the difference decays
  /// with the time constant, whatever the air does. Throws std::out_of_range outside the air.
  [[nodiscard]] Instant warm(Instant t, Celsius from) const;
  static constexpr Kelvins near_enough{0.5};  ///< judgement

 private:
  [[nodiscard]] Celsius at(Instant) const;

  Hours time_constant_{0};
  AirSeries air_;
  std::vector<Celsius> at_rows_;
  AirSeries room_;
};

}  // namespace coatday::climate
