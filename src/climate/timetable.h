#pragma once
// When the heater runs, and what it is set to: by weekday and by range of dates.

#include <optional>
#include <vector>

#include "climate/air.h"

namespace coatday::climate {

/// Hours of one day in which the room is held at a set point. 0 <= from < until <= 24 h after local midnight.
struct HeatedHours {
  Minutes from{0};
  Minutes until{0};
  Celsius set_point;
};

/// One rule of the timetable. Days or dates that are not given match all.
struct HeatingRule {
  std::vector<weekday> days;                 ///< empty: every day
  std::optional<LocalDay> first, last;       ///< both ends included
  std::vector<HeatedHours> heated;           ///< not overlapping
  std::optional<Celsius> otherwise;          ///< set point outside the heated hours; none: the heater is off
  std::optional<RelativeHumidity> humidity;  ///< of the room's air where no outdoor air is given
};

/// The last rule that matches a day is the one that counts.
struct Timetable {
  std::vector<HeatingRule> rules;
  std::optional<Celsius> night{};  ///< set point outside the heated hours of every day, in place of the rules' own `otherwise`

  /// The rule of that day, or null.
  [[nodiscard]] const HeatingRule* on(LocalDay) const;
  /// The set point at that wall time, none where the heater is off or no rule matches.
  [[nodiscard]] std::optional<Celsius> set_point(LocalTime) const;
};

}  // namespace coatday::climate
