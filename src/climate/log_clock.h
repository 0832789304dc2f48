#pragma once
// From what a logger's clock shows to instants, through the hour that comes twice and the one that never comes.

#include <cstddef>
#include <vector>

#include "climate/log.h"

namespace coatday::climate {

struct ClockInstants {
  std::vector<Instant> instants;    ///< one for each time
  std::vector<std::size_t> second;  ///< those of a wall time that comes twice, taken as the second one
  std::vector<std::size_t> never;   ///< those of a wall time that summer time skips: the logger's clock had not been put forward
};

/// Of wall times in the order of the file, oldest first. A wall time that comes twice is taken as the first one until the clock steps back
/// (or stands still, where readings are half an hour or more apart); a time before the one above it is otherwise left as it is.
[[nodiscard]] ClockInstants instants_of(const std::vector<LocalTime>&, LogClock, const Zone&);

}  // namespace coatday::climate
