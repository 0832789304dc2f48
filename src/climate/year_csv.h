#pragma once
// The text form of an hourly year: see outdoor.h.

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "climate/outdoor.h"

namespace coatday::climate {

struct YearCsv {
  std::vector<Air> hours;  // 8760, from 1 January
  Hours utc_offset{0};
  std::optional<Pascals> mean_pressure;
};

/// Index of the hour that starts at `hour` o'clock, in a year of 365 days. 29 February has no hour.
[[nodiscard]] std::size_t hour_of_year(date::month, date::day, int hour);

[[nodiscard]] tl::expected<YearCsv, CsvError> read_year(std::string_view text);

}  // namespace coatday::climate
