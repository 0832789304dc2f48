#pragma once
// Instants and local time. Curing is elapsed time (Instant); working hours are wall time (LocalTime). One class, Zone, joins them.

#include <date/date.h>
#include <chrono>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

namespace date {
class time_zone;  // its header costs a second to compile
}

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

/// A time zone by its IANA name.
class Zone {
 public:
  Zone();  ///< UTC
  /// Fails with a message when the name is not in the machine's zone database.
  [[nodiscard]] static tl::expected<Zone, std::string> find(std::string_view name);

  [[nodiscard]] const std::string& name() const { return name_; }
  [[nodiscard]] LocalTime to_local(Instant) const;
  /// A wall time that summer time skips is moved on to the end of the gap; one that comes twice is taken the first time.
  [[nodiscard]] Instant to_instant(LocalTime) const;
  /// Offset from UTC at that instant.
  [[nodiscard]] std::chrono::seconds offset(Instant) const;

 private:
  std::string name_;
  const date::time_zone* zone_ = nullptr;  // none for UTC; else owned by the zone database, which lives as long as the program
};

/// Dates beyond this year are refused: the zone files of Debian 12 list no summer time after 2037.
inline constexpr int last_year = 2036;

[[nodiscard]] constexpr LocalDay day_of(LocalTime t) { return std::chrono::floor<date::days>(t); }

// Writing. None of these reads the machine's own zone or locale.
[[nodiscard]] std::string iso8601(Instant, const Zone&);  ///< 2027-01-11T08:00:00-06:00
[[nodiscard]] std::string clock_time(LocalTime);          ///< 08:00
[[nodiscard]] std::string short_date(LocalDay);           ///< Mon 11 Jan
[[nodiscard]] std::string long_date(LocalDay);            ///< Mon 11 Jan 2027
[[nodiscard]] std::string day_and_time(LocalTime);        ///< Mon 11 Jan 08:00

// Reading. The whole text must be used; the message says what was expected.
[[nodiscard]] tl::expected<LocalTime, std::string> parse_local_time(std::string_view);  ///< 2027-01-11 08:00
[[nodiscard]] tl::expected<LocalDay, std::string> parse_date(std::string_view);         ///< 2027-01-11
[[nodiscard]] tl::expected<Minutes, std::string> parse_clock_time(std::string_view);    ///< 08:00, minutes after midnight, up to 24:00
[[nodiscard]] tl::expected<Instant, std::string> parse_iso8601(std::string_view);       ///< 2027-01-11T08:00:00-06:00, as iso8601() writes
[[nodiscard]] tl::expected<weekday, std::string> parse_weekday(std::string_view);       ///< mon, monday

}  // namespace coatday
