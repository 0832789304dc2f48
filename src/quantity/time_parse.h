#pragma once
// Times and dates from text. The whole text must be used; the message says what was expected.

#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "quantity/instant.h"

namespace coatday {

[[nodiscard]] tl::expected<LocalTime, std::string> parse_local_time(std::string_view);  ///< 2027-01-11 08:00
[[nodiscard]] tl::expected<LocalDay, std::string> parse_date(std::string_view);         ///< 2027-01-11
[[nodiscard]] tl::expected<Minutes, std::string> parse_clock_time(std::string_view);    ///< 08:00, minutes after midnight, up to 24:00
[[nodiscard]] tl::expected<Instant, std::string> parse_iso8601(std::string_view);       ///< 2027-01-11T08:00:00-06:00, as iso8601() writes
[[nodiscard]] tl::expected<weekday, std::string> parse_weekday(std::string_view);       ///< mon, monday

}  // namespace coatday
