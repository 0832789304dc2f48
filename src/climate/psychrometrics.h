#pragma once
// Moist air. Source of all: ASHRAE Handbook Fundamentals 2017, chapter 1 (Hyland and Wexler's saturation pressure).

#include "climate/air.h"

namespace coatday::climate {

inline constexpr Pascals standard_pressure{101325};

/// -100 to 200 °C, over ice below 0 °C (eqs 5 and 6).
[[nodiscard]] Pascals saturation_pressure(Celsius);
[[nodiscard]] Pascals vapour_pressure(const Air&);
/// Of each row.
[[nodiscard]] std::vector<Pascals> vapour_pressures(const AirSeries&);
/// The temperature at which this air is saturated; below 0 °C its frost point. Inverts eqs 5 and 6 to 1e-9 K.
/// Throws std::domain_error unless humidity is > 0.
[[nodiscard]] Celsius dew_point(const Air&);
/// Thermodynamic wet bulb (eqs 31, 33 and 35) by Newton's method, to 1e-9 K. Within about 0.3 K below 0 °C both a wet and an icy bulb
/// solve the equations: the wet one is returned. For humidity from 0 to 1 and air well below the boiling point.
[[nodiscard]] Celsius wet_bulb(const Air&, Pascals pressure = standard_pressure);
[[nodiscard]] HumidityRatio humidity_ratio(const Air&, Pascals pressure = standard_pressure);  ///< eq. 20
/// Of moist air, per kilogram of the dry air in it; 0 for dry air at 0 °C (eq. 30).
[[nodiscard]] KilojoulesPerKilogram enthalpy(Celsius, HumidityRatio);
[[nodiscard]] RelativeHumidity relative_humidity(Celsius, HumidityRatio, Pascals pressure = standard_pressure);  ///< may exceed 1
[[nodiscard]] Pascals pressure_at_altitude(Metres);                                                              ///< eq. 3

}  // namespace coatday::climate
