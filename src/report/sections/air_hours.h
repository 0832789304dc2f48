#pragma once
// Which hours of the plan rest on which source of air.

#include <string>

#include "job/plan.h"

namespace coatday::report {

/// "logger until Tue 12 Jan 13:30; then timetable"; empty where all hours rest on one source.
[[nodiscard]] std::string air_hours(const job::Plan&);

}  // namespace coatday::report
