#pragma once
// Quantities in the units of the reader, with the unit, never "-0".

#include <string>

#include "quantity/quantity.h"
#include "quantity/time.h"

namespace coatday {

/// The units a reader wants to see; calculation never sees them.
enum class Units { metric, us };

[[nodiscard]] std::string format_length(Metres, Units);               ///< 1727 mm | 68 in, 2 1/8 in (nearest 1/16; decimals below 1/4 in)
[[nodiscard]] std::string format_area(SquareMetres, Units);           ///< 1.24 m² | 13.3 ft²
[[nodiscard]] std::string format_volume(Litres, Units);               ///< 250 ml, 1.2 l | 8 fl oz, 1.3 qt, 2 gal
[[nodiscard]] std::string format_airflow(CubicMetresPerHour, Units);  ///< 35 m³/h | 21 cfm, rounded up: what is needed
[[nodiscard]] std::string format_exhaust(CubicMetresPerHour, Units);  ///< the same rounded down: what is there
[[nodiscard]] std::string format_spreading_rate(SquareMetresPerLitre, Units);
[[nodiscard]] std::string format_temperature(Celsius, Units);  ///< 19 °C | 66 °F
[[nodiscard]] std::string format_humidity(RelativeHumidity);   ///< 22 % RH
[[nodiscard]] std::string format_film(Micrometres, Units);     ///< 38 µm | 1.5 mil
[[nodiscard]] std::string format_span(Hours);                  ///< 35 min, 2 h 30 min, 3 days 4 h: two largest units
[[nodiscard]] std::string format_hours_minutes(Minutes);       ///< 0:50

}  // namespace coatday
