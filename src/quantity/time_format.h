#pragma once
// Times and dates as text. Nothing here reads the machine's own zone or locale.

#include <string>

#include "quantity/zone.h"

namespace coatday {

[[nodiscard]] std::string iso8601(Instant, const Zone&);  ///< 2027-01-11T08:00:00-06:00
[[nodiscard]] std::string clock_time(LocalTime);          ///< 08:00
[[nodiscard]] std::string short_date(LocalDay);           ///< Mon 11 Jan
[[nodiscard]] std::string long_date(LocalDay);            ///< Mon 11 Jan 2027
[[nodiscard]] std::string day_and_time(LocalTime);        ///< Mon 11 Jan 08:00

}  // namespace coatday
