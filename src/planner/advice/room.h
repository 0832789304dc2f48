#pragma once
// Changes of the air where outdoor air comes through a room: by the room's heater, within what it can do where that is known, and by a
// dehumidifier, the room's own or one that is large enough.

#include "planner/advice/changes.h"

namespace coatday::planner {

[[nodiscard]] bool has_room(const job::Job&);
[[nodiscard]] bool has_moisture(const job::Job&);
[[nodiscard]] std::string at_night_text(const job::Job&, Celsius);
[[nodiscard]] std::string throughout_text(const job::Job&, Celsius);
[[nodiscard]] Change heated_at_night(const job::Job&, Celsius);
[[nodiscard]] Change heated_throughout(const job::Job&, Celsius);
/// Returns nothing where a dehumidifier is already set so dry.
[[nodiscard]] std::optional<Change> dehumidifier_at(const job::Job&, RelativeHumidity);

}  // namespace coatday::planner
