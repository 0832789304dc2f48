#pragma once
// What lags behind the room's air, by the checker's own reckoning: time constants from the shapes, temperatures minute by minute.

#include <optional>
#include <vector>

#include "climate/air.h"
#include "finish/product.h"
#include "piece/piece.h"

namespace coatday::plan::checking {

/// In classes; 0 follows the air.
[[nodiscard]] Hours own_time_constant(const piece::Part&);
[[nodiscard]] Hours own_time_constant(const finish::Product& in_its_can);

class Body {
 public:
  /// Settled in the air before `begin`, where there is any.
  Body(const climate::AirSeries& air, Hours time_constant, Instant begin);

  [[nodiscard]] const climate::AirSeries& air() const { return air_; }  ///< at the surface, from `begin`
  [[nodiscard]] Celsius start() const { return Celsius(minutes_.front()); }
  /// How far a body like this is behind this one at `t`, brought in at `carried_in` from such a place.
  [[nodiscard]] Kelvins behind(Instant carried_in, Celsius from, Instant t) const;

 private:
  [[nodiscard]] double next(double body, double room) const;
  [[nodiscard]] std::size_t minute(Instant t) const { return static_cast<std::size_t>((t - air_.begin()) / Minutes(1)); }

  double hours_;
  climate::AirSeries air_;
  std::vector<double> minutes_;  // °C at each full minute
  std::vector<double> room_;     // °C of the air in each row
};

/// What steps of a minute may be off by.
inline constexpr Kelvins surface_slack{0.02};

/// The first row in which what a plan says of a surface is off; none where it agrees. Rows that are missing are off.
[[nodiscard]] std::optional<std::size_t> first_off(const climate::AirSeries& said, const climate::AirSeries& own);
/// The room's air at these temperatures.
[[nodiscard]] climate::AirSeries at_temperatures(const climate::AirSeries& room, const climate::AirSeries& temperatures);

}  // namespace coatday::plan::checking
