#pragma once
// The shop's air: a logger's readings, and where there are none outdoor hours under a timetable, a timetable alone, or what is constant.

#include <filesystem>
#include <optional>
#include <vector>

#include "climate/log.h"
#include "input/fields.h"
#include "input/files.h"
#include "job/job.h"

namespace coatday::input {

struct ShopAir {
  job::AirMaker maker;   ///< empty after a mistake
  job::RoomAirMaker in;  ///< empty where no air comes from a room
  std::vector<job::AirNote> notes;
  std::optional<shop::HeatingCost> heating;
  climate::KnownRoom room;
  climate::LogForm log;  ///< how its logger is said to write
};
/// The air of the shop's file. What comes first in the list counts first: log, outdoors, timetable, constant.
[[nodiscard]] ShopAir read_air(const Fields& shop, const std::filesystem::path& file, const Zone&, Files&, Mistakes&);

}  // namespace coatday::input
