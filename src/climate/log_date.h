#pragma once
// Dates with times as loggers write them: 2027-01-11T08:00:00-06:00, 2027/1/11 8:00, 11.01.2027 08:00, 1/11/27 8:00:00 PM, 11-Jan-2027 20:00.

#include <array>
#include <optional>
#include <string_view>

#include "climate/log.h"

namespace coatday::climate {

struct WrittenTime {
  std::array<int, 2> day_and_month{};  ///< in the order of the text, unless `order` is known
  int year = 0;
  std::optional<DateOrder> order;              ///< where the text alone decides it
  std::chrono::seconds clock{0};               ///< after midnight
  std::optional<std::chrono::seconds> offset;  ///< from UTC, where written

  /// Nothing where the calendar has no such day, or it lies before 2000 or after last_year.
  [[nodiscard]] std::optional<LocalTime> local(DateOrder) const;
};

/// The offset from UTC in the name of a column: "Time, UTC", "Date Time (GMT+01:00)".
[[nodiscard]] std::optional<std::chrono::seconds> offset_in_name(std::string_view);

/// Nothing where the text is no date with a time. Fractions of seconds are dropped.
[[nodiscard]] std::optional<WrittenTime> read_written_time(std::string_view);

}  // namespace coatday::climate
