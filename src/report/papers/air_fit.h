#pragma once
// What a logger's readings say of the room: for people, for programs and as a table to plot.

#include <string>
#include <string_view>

#include "climate/room_fit.h"
#include "job/job.h"
#include "report/document/lines.h"

namespace coatday::report {

/// What was fitted, with ranges and residuals, and the keys of the shop's file that follow.
[[nodiscard]] std::string fit_text(const job::Job&, const climate::Log&, const climate::RoomFit&, const TextStyle&);
/// "coatday-fit/1".
[[nodiscard]] std::string fit_json(const job::Job&, const climate::Log&, const climate::RoomFit&, std::string_view version);
/// Every reading beside what the model says of it and the air outdoors (CSV).
[[nodiscard]] std::string fit_csv(const job::Job&, const climate::RoomFit&);

}  // namespace coatday::report
