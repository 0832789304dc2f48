#pragma once
// What a logger's readings say of the room, for other programs.

#include <string>
#include <string_view>

#include "climate/room_fit.h"
#include "job/job.h"

namespace coatday::report {

/// "coatday-fit/1".
[[nodiscard]] std::string fit_json(const job::Job&, const climate::Log&, const climate::RoomFit&, std::string_view version);
/// Every reading beside what the model says of it and the air outdoors (CSV).
[[nodiscard]] std::string fit_csv(const job::Job&, const climate::RoomFit&);

}  // namespace coatday::report
