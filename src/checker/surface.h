#pragma once
// What lags behind the room's air, worked out by the checker itself: time constants from the shapes, temperatures minute by minute.

#include <optional>
#include <vector>

#include "climate/air.h"
#include "finish/product.h"
#include "piece/piece.h"

namespace coatday::checker {

/// To the minute; 0 follows the air.
[[nodiscard]] Hours own_time_constant(const piece::Part&);
[[nodiscard]] Hours own_time_constant(const finish::Product& in_its_can);

class ThermalBody {
 public:
  /// Settled in the air before `begin`, where there is any.
  ThermalBody(const climate::AirSeries& air, Hours time_constant, Instant begin);

  [[nodiscard]] const std::vector<Celsius>& means() const { return means_; }  ///< over each row from `begin`
  [[nodiscard]] Celsius start() const { return Celsius(at_rows_.front()); }
  /// How far an equal body is behind this one at `t`, if it came in at `carried_in` from a place so cold.
  [[nodiscard]] Kelvins behind(Instant carried_in, Celsius from, Instant t) const;

 private:
  static constexpr int minutes_a_row = 30;
  [[nodiscard]] double next(double body, double room) const { return body * keeps_ + room * takes_; }

  double keeps_ = 0, takes_ = 1;  // of itself, and of the room, in a minute
  Instant begin_;
  std::vector<Celsius> means_;
  std::vector<double> at_rows_;  // °C at the start of each row, and at the end of the last
  std::vector<double> room_;     // °C of the air in each row
};

/// So far steps of a minute may be off.
inline constexpr Kelvins surface_slack{0.02};

/// The first row in which the plan is wrong about a surface. Returns nothing where it agrees. A missing row is wrong.
[[nodiscard]] std::optional<std::size_t> first_off(const climate::AirSeries& said, const std::vector<Celsius>& own);
/// The room's air with all its water at these temperatures, row by row. The pressure of the water is given.
[[nodiscard]] climate::AirSeries at_temperatures(const climate::AirSeries& room, const std::vector<Pascals>&, const std::vector<Celsius>&);

}  // namespace coatday::checker
