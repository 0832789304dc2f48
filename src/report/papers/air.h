#pragma once
// The shop's air, day by day.

#include "job/air_forecast.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// Each day's ranges, then for each finish the half hours of each day in which it may go on.
[[nodiscard]] Document air(const job::Job&, const finish::Catalogue&, const job::AirForecast&, Units);

}  // namespace coatday::report
