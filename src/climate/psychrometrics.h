#pragma once
// Moist air. Source of all: ASHRAE Handbook Fundamentals 2017, chapter 1 (Hyland and Wexler's saturation pressure).

#include "climate/air.h"

namespace coatday::climate {

inline constexpr Pascals standard_pressure{101325};

/// -100 to 200 °C, over ice below 0 °C (eqs 5 and 6).
[[nodiscard]] Pascals saturation_pressure(Celsius);
[[nodiscard]] Pascals vapour_pressure(const Air&);
/// The temperature at which this air is saturated; below 0 °C its frost point. Humidity must be > 0.
[[nodiscard]] Celsius dew_point(const Air&);
/// Thermodynamic wet bulb (eqs 33 and 35), by bisection to 1e-6 K.
[[nodiscard]] Celsius wet_bulb(const Air&, Pascals pressure = standard_pressure);
[[nodiscard]] HumidityRatio humidity_ratio(const Air&, Pascals pressure = standard_pressure);      ///< eq. 20
[[nodiscard]] RelativeHumidity relative_humidity(Celsius, HumidityRatio, Pascals pressure = standard_pressure);  ///< may exceed 1
[[nodiscard]] Pascals pressure_at_altitude(Metres);                                                ///< eq. 3

}  // namespace coatday::climate
