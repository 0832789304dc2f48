#pragma once
// The time constant of a room, from the hours in which the heater is off.

#include "climate/room_fit.h"

namespace coatday::climate {

/// Fills in the temperatures that it models.
[[nodiscard]] tl::expected<Fitted, std::string> fit_time_constant(const KnownRoom&, const Zone&, RoomFit&);

}  // namespace coatday::climate
