#pragma once
// What a logger's readings say of the room.

#include "climate/room_fit.h"
#include "job/job.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report {

/// What was fitted, with ranges and residuals, and the keys of the shop's file that follow.
[[nodiscard]] Document air_fit(const job::Job&, const climate::Log&, const climate::RoomFit&, Units);

}  // namespace coatday::report
