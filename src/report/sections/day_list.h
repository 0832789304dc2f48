#pragma once
// The plan's events day by day, days without any included.

#include <string>
#include <vector>

#include "job/plan.h"
#include "quantity/text.h"

namespace coatday::report {

struct Day {
  LocalDay date;
  Instant midnight, next_midnight;
  std::vector<const job::Event*> events;  ///< that start on it
  std::vector<shop::WorkingTime> shifts;

  [[nodiscard]] bool closed() const { return shifts.empty(); }
};
/// From the first event's day to the last one's.
[[nodiscard]] std::vector<Day> day_list(const job::Plan&);

/// A day with events, or days without any of which all are closed or none is.
struct DaySpan {
  std::size_t first, last;
};
[[nodiscard]] std::vector<DaySpan> day_spans(const std::vector<Day>&);

/// "08:00-17:00 at 68 °F, 25-33 % RH; night 59-68 °F, 20-31 % RH" of a day with events.
[[nodiscard]] std::string hours_text(const job::Plan&, const Day&, const Day* next, Units);
/// "closed; 57-68 °F, 18-30 % RH; drying goes on" of days without.
[[nodiscard]] std::string quiet_text(const job::Plan&, const Day& first, const Day& last, Units);
/// The moment until which somebody is busy or away, before the day's first event.
[[nodiscard]] Instant day_begins(const job::Plan&, const Day&);

}  // namespace coatday::report
