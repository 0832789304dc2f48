#pragma once
// Which column of a logger's file holds what, and where its table begins.

#include <optional>
#include <string_view>

#include "climate/log.h"

namespace coatday::climate {

struct LogColumns {
  char separator = ',';
  int header_line = 0;
  std::optional<std::size_t> date;  ///< where it stands apart from the time
  std::size_t time = 0;
  std::size_t temperature = 0;
  std::optional<std::size_t> humidity;
  Scale scale = Scale::celsius;
  bool percent = false;                        ///< the humidity's name says so
  std::optional<std::chrono::seconds> offset;  ///< from UTC, where the name of the time column gives it
};

/// From the first line that names a time and a temperature, within the first hundred; with each separator, the one that parts it into most
/// columns. An error where there is none, or two columns could be the same, or nothing says °C or °F.
[[nodiscard]] tl::expected<LogColumns, ReadError> find_log_columns(std::string_view text, const LogForm&);

}  // namespace coatday::climate
