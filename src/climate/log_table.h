#pragma once
// The rows of a logger's file as they stand there, before any of them is checked.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "climate/log.h"

namespace coatday::climate {

struct LogRow {
  int line = 0;
  LocalTime time;                              ///< as the logger's clock showed it
  std::optional<std::chrono::seconds> offset;  ///< from UTC, where the file gives it
  double temperature = 0;                      ///< °C
  std::optional<double> humidity;              ///< in percent, whatever it may be
};

struct LogTable {
  std::vector<LogRow> rows;  ///< in the order of the file
  bool has_humidity = false;
  bool fractions_as_percent = false;  ///< the humidity's name says percent, but none is above 1: all were taken as fractions
  std::vector<int> without_time, without_temperature;  ///< lines that were dropped
};

[[nodiscard]] tl::expected<LogTable, ReadError> read_log_table(std::string_view text, const LogForm&);

}  // namespace coatday::climate
