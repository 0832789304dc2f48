#pragma once
// Hours, days and dates as files hold them.

#include <string_view>
#include <vector>

#include "climate/timetable.h"
#include "quantity/text.h"

namespace coatday::input {

/// A stretch of a day's wall time.
struct HoursOfDay {
  Minutes from{0};
  Minutes until{0};
};
[[nodiscard]] Parsed<std::vector<HoursOfDay>> parse_hours_of_day(std::string_view);      ///< 08:00-12:00, 13:00-17:00
[[nodiscard]] Parsed<std::vector<climate::HeatedHours>> parse_heated(std::string_view);  ///< 06:00-12:00 at 20 °C, 12:00-20:00 at 18 °C
[[nodiscard]] Parsed<std::vector<weekday>> parse_days(std::string_view);                 ///< mon-fri, sun

struct DateRange {
  LocalDay first;
  LocalDay last;
};
[[nodiscard]] Parsed<DateRange> parse_dates(std::string_view);  ///< 2027-12-24 to 2027-12-31, or one date

/// A day, with or without a time.
struct Moment {
  LocalTime time;
  bool whole_day = false;
};
[[nodiscard]] Parsed<Moment> parse_moment(std::string_view);  ///< 2027-01-11 08:00, or 2027-01-11

}  // namespace coatday::input
