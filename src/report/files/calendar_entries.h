#pragma once
// The plan as entries of a calendar.

#include <optional>
#include <string>
#include <vector>

#include "job/plan.h"
#include "quantity/text.h"

namespace coatday::report {

struct CalendarAlarm {
  Minutes after_start{0};  ///< negative: before
  std::string text;
};

struct CalendarEntry {
  std::string uid;  ///< of shop, order, piece and step, never of dates: a plan made anew moves the entry
  std::string order;
  std::string summary, location, description;
  Instant start, end;
  std::optional<LocalDay> all_day;  ///< in place of start and end
  std::vector<CalendarAlarm> alarms;
  const job::Event* event = nullptr;  ///< none for a hand-over
};

/// A hands-on step each, then from when each piece may be wrapped and delivered and fully used, on the safe dates.
[[nodiscard]] std::vector<CalendarEntry> calendar_entries(const job::Plan&, const std::string& order, Units);

}  // namespace coatday::report
