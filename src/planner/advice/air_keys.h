#pragma once
// Other air as keys of the shop's file. A change that no key says has none.

#include <string>
#include <vector>

#include "job/job.h"

namespace coatday::planner {

using Keys = std::vector<std::string>;

/// "08:00-12:00", as files have it.
[[nodiscard]] std::string hours_text(Minutes from, Minutes until);

[[nodiscard]] Keys at_night_keys(const job::Job&, Celsius floor);
[[nodiscard]] Keys throughout_keys(const job::Job&, Celsius floor);
[[nodiscard]] Keys humidity_keys(const job::Job&, RelativeHumidity ceiling);
/// `removes` is set where the shop has no dehumidifier yet.
[[nodiscard]] Keys dehumidifier_keys(RelativeHumidity, bool has_one, KilogramsPerHour removes);

}  // namespace coatday::planner
