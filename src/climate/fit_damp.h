#pragma once
// What water a room gains, from its humidity and that of outdoors.

#include "climate/room_fit.h"

namespace coatday::climate {

/// Fills in the humidities that it models.
[[nodiscard]] tl::expected<Fitted, std::string> fit_moisture_gain(const KnownRoom&, RoomFit&);

}  // namespace coatday::climate
