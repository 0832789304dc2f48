#pragma once
// A logger's readings, cleaned, from a table (CSV) in whatever form the logger writes it.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "climate/air.h"
#include "climate/column_name.h"
#include "climate/csv.h"

namespace coatday::climate {

struct Reading {
  Instant time;
  Celsius temperature;
  std::optional<RelativeHumidity> humidity;  ///< none where the sensor gave none that can be
};

/// Gaps up to this are bridged in a straight line (judgement: less than a heater needs to change a shop by much); beyond, the next source of
/// air goes on.
inline constexpr Minutes longest_log_bridge{180};

struct Log {
  std::string name;                ///< of its file
  std::vector<Reading> readings;   ///< by time, no two at the same; at least two
  Minutes usual_step{0};           ///< the median time between two
  std::vector<std::string> notes;  ///< what was dropped, put in order or bridged, with the rows of the file
  std::string days;                ///< "Fri 30 Oct 2026 to Wed 4 Nov 2026", in the zone that it was read for
};

/// Readings further apart than this count as bridged: two and a half usual steps, half an hour at least.
[[nodiscard]] Minutes bridged_step(const Log&);

/// "231 readings from Fri 30 Oct 2026 07:00 to Wed 4 Nov 2026 14:00", and what holds in gaps and beyond them.
[[nodiscard]] std::string span_text(const Log&, const Zone&);

/// What a logger's clock shows: the shop's wall time, that without summer time, or UTC.
enum class LogClock { shop, standard, utc };
enum class DateOrder { day_first, month_first };

/// What the user says about a logger's file; the rest is found in it.
struct LogForm {
  std::string date, time, temperature, humidity;  ///< names of columns; empty: found by the usual names
  std::optional<Scale> scale;                     ///< none: by the name of the column
  std::optional<LogClock> clock;                  ///< none: by the name of the column ("Time, UTC+1"), else the shop's
  std::optional<DateOrder> dates;                 ///< none: by a day above 12 in the file
};

/// Any bytes. An error where no reading can be had, or it is not certain what a column or a date means. A time with its own offset from UTC
/// ("…T08:00:00Z") needs no clock.
[[nodiscard]] tl::expected<Log, ReadError> read_log(std::string_view text, std::string name, const LogForm&, const Zone&);

}  // namespace coatday::climate
