#pragma once
// The shop's air, day by day: for people, for programs and as a table.

#include <string>
#include <string_view>

#include "job/air_forecast.h"
#include "report/document/lines.h"

namespace coatday::report {

/// Each day's ranges, then for each finish the half hours of each day in which it may go on.
[[nodiscard]] std::string air_text(const job::Job&, const finish::Catalogue&, const job::AirForecast&, const TextStyle&);
/// "coatday-air/1": the days, and every half hour of them.
[[nodiscard]] std::string air_json(const job::Job&, const job::AirForecast&, std::string_view version);
/// A table (CSV), every half hour a row, every finish a column.
[[nodiscard]] std::string air_csv(const job::Job&, const job::AirForecast&);

}  // namespace coatday::report
