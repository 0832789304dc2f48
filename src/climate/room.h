#pragma once
// The room between outdoors and the piece: its heat and its moisture, over a span in which what is around it stays the same.

#include <optional>

#include "climate/air.h"

namespace coatday::climate {

/// A heater that takes time: at its full output the room ends up so much warmer than outdoors.
struct Heater {
  Kelvins lift;
  std::optional<Kilowatts> power{};  ///< the heat that is lost then, and so lost per kelvin: power / lift
};

/// Takes water out of the air where that is damper than its set point, up to its capacity, and never below the set point.
struct Dehumidifier {
  RelativeHumidity set_point;
  KilogramsPerHour capacity;
};

/// V dW/dt = n V (W_out - W) + G - D, in kg of water over kg of dry air: the air of a well-mixed room, with nothing soaked up by wood or walls.
struct Moisture {
  CubicMetres volume;
  double air_changes = 0;   ///< per hour, above 0
  KilogramsPerHour gain{};  ///< of people, wet work and floors, at all hours
  std::optional<Dehumidifier> dehumidifier{};
};

struct Room {
  Hours time_constant{0};              ///< of Newton's law of cooling, above 0
  std::optional<Heater> heater{};      ///< none: any set point is held at once
  std::optional<Moisture> moisture{};  ///< none: the humidity ratio is that of outdoors
};

struct RoomState {
  Celsius temperature;
  HumidityRatio water;
};

/// What a room has around it for a while.
struct Surroundings {
  Celsius temperature;
  HumidityRatio water;
  Pascals pressure;
  std::optional<Celsius> set_point;  ///< none: the heater is off
};

/// The exact temperature after `span`: full output up to the set point, then just enough to hold it, none above it. `heating` grows by the
/// hours of full output. Only for a heater with a limit.
[[nodiscard]] Celsius heated(const Room&, Celsius from, const Surroundings&, Hours span, Hours& heating);

/// The water after `span`, with the temperature at its end. Exact, except that dehumidifier and condensation only see that last temperature.
/// Water that the air cannot hold condenses and leaves it. For a room with moisture.
[[nodiscard]] HumidityRatio dried(const Moisture&, HumidityRatio from, Celsius temperature, const Surroundings&, Hours span, RoomWork&);

/// kg of dry air that the room holds. Source: ASHRAE Handbook Fundamentals 2017, chapter 1, eq. 26.
[[nodiscard]] Kilograms dry_air(CubicMetres, Celsius, HumidityRatio, Pascals);

}  // namespace coatday::climate
