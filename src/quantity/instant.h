#pragma once
// Instants and local time. Curing is elapsed time (Instant); working hours are wall time (LocalTime).

#include <date/date.h>
#include <chrono>

namespace coatday {

using Instant = std::chrono::sys_seconds;  ///< a moment, UTC
using Minutes = std::chrono::minutes;
using Hours = std::chrono::duration<double, std::ratio<3600>>;  ///< elapsed hours, fractional
using LocalTime = date::local_seconds;                          ///< wall time in the shop's zone
using LocalDay = date::local_days;
using date::weekday;
using date::year_month_day;

// Both take a millisecond or less as floating-point noise, and a span beyond 100 years (or not a number) as 100 years.
/// Whole minutes, rounded up: never promises a moment too early.
[[nodiscard]] Minutes ceil_minutes(Hours);
/// The whole second at or after `from` plus `elapsed`.
[[nodiscard]] Instant later(Instant from, Hours elapsed);

/// Dates beyond this year are refused: the zone files of Debian 12 list no summer time after 2037.
inline constexpr int last_year = 2036;

[[nodiscard]] constexpr LocalDay day_of(LocalTime t) { return std::chrono::floor<date::days>(t); }

}  // namespace coatday
