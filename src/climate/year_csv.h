#pragma once
// A plain hourly table of a year: columns month, day, hour (1 to 24, the hour's end, or from a first row of 0 its beginning; local standard time), temperature, relative humidity and
// perhaps pressure, in any order and among others, found by their names ("t_C", "Temp (°F)", "rh_pct", "p_hPa"). Comment lines begin with
// '#'; one of them holds "utc_offset_h N", and one perhaps "elev_m N".

#include "climate/weather_year.h"

namespace coatday::climate {

/// Any bytes. An empty field is a missing value.
[[nodiscard]] tl::expected<WeatherYear, ReadError> read_year_csv(std::string_view text);

}  // namespace coatday::climate
