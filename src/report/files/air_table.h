#pragma once
// The shop's air, day by day, for other programs.

#include <string>
#include <string_view>

#include "job/air_forecast.h"

namespace coatday::report {

/// "coatday-air/1": the days, and every half hour of them.
[[nodiscard]] std::string air_json(const job::Job&, const job::AirForecast&, std::string_view version);
/// A table (CSV), every half hour a row, every finish a column.
[[nodiscard]] std::string air_csv(const job::Job&, const job::AirForecast&);

}  // namespace coatday::report
