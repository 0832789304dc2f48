#pragma once
// Local times as they stand in files: a day and a clock, without a zone.

#include <date/date.h>

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace coatday::soak {

using When = date::local_time<std::chrono::minutes>;

/// "2027-01-11 08:00".
[[nodiscard]] std::string stamp(When);
/// "2027-01-11".
[[nodiscard]] std::string day_of(When);
/// Reads a day, a day and a clock, or the beginning of an instant as JSON has it; its offset is left out.
[[nodiscard]] std::optional<When> when_of(std::string_view);
/// The instant of a text of JSON, with its offset.
[[nodiscard]] std::optional<date::sys_seconds> instant_of(const std::string&);

}  // namespace coatday::soak
