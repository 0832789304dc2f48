#pragma once
// Weather files in the EPW form (EnergyPlus Auxiliary Programs, "EnergyPlus Weather File (EPW) Data Dictionary"): 8 header lines, of which
// LOCATION gives place, hours from UTC and elevation; then records of 35 fields, of which only the first 10 are read, and of those not the
// dew point, which follows from temperature and humidity. Marks for missing: temperature 99.9, relative humidity 999, pressure 999999.

#include "climate/weather_year.h"

namespace coatday::climate {

/// By content.
[[nodiscard]] bool is_epw(std::string_view text);
/// Any bytes. Fields at a record's end may be missing after the humidity; humidity above 100 % counts as 100.
[[nodiscard]] tl::expected<WeatherYear, ReadError> read_epw(std::string_view text);

}  // namespace coatday::climate
