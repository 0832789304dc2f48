#pragma once
// What a logger's readings say of the room: its time constant, from the hours in which the heater is off, and what water it gains. Least
// squares, with a range for each value, or the reason why the readings do not determine it.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "climate/log.h"
#include "climate/shop_air.h"

namespace coatday::climate {

/// A value with the range that holds it in about 19 of 20 cases if the model is right: where the squares grow by 4 variances, each reading
/// counting for less the more its residual follows the one before.
struct Fitted {
  double value = 0, low = 0, high = 0;
  double rms = 0, worst = 0, bias = 0;  ///< of measured less modelled; `worst` by size
  Hours hours{0};                       ///< that the readings used span
  std::size_t readings = 0;
  std::size_t spans = 0;  ///< uninterrupted ones
};

struct FitRow {
  Reading measured;
  std::optional<Celsius> outdoors;
  std::optional<Celsius> modelled;  ///< where the reading was used for the time constant
  std::optional<RelativeHumidity> modelled_humidity;
};

struct RoomFit {
  tl::expected<Fitted, std::string> time_constant;  ///< h; residuals in K
  tl::expected<Fitted, std::string> moisture_gain;  ///< kg/h; residuals in kg of water over kg of dry air
  double sensor = 0;                                ///< kg/h by which the gain changes where the sensor reads 3 % RH too much
  std::optional<Celsius> settles_at;                ///< without outdoor air: the temperature that the nights approach
  std::vector<FitRow> rows;                         ///< of every reading
};

[[nodiscard]] RoomFit fit_room(const Log&, const KnownRoom&, const Zone&);

}  // namespace coatday::climate
