#include "climate/log_clock.h"

#include <algorithm>
#include <optional>

namespace coatday::climate {
namespace {

using std::chrono::seconds;

/// Where the zone's offset is smaller: winter on both halves of the globe.
seconds standard_offset(const Zone& zone, LocalTime t) {
  const auto year = year_month_day(day_of(t)).year();
  const auto at = [&](date::month month) { return zone.offset(Instant(date::sys_days(year / month / 1))); };
  return std::min(at(date::January), at(date::July));
}

/// The second of two instants with this wall time, if there are two.
std::optional<Instant> second_instant(const Zone& zone, LocalTime t, Instant first) {
  for (const Minutes back : {Minutes(60), Minutes(30), Minutes(120)})
    if (zone.to_local(first + back) == t) return first + back;
  return std::nullopt;
}

/// Whether readings are so far apart that the clock may show the same time twice in a row when it is put back.
bool is_coarse(const std::vector<LocalTime>& times) {
  std::vector<seconds> steps;
  for (std::size_t i = 1; i < times.size(); ++i)
    if (times[i] > times[i - 1]) steps.push_back(times[i] - times[i - 1]);
  if (steps.empty()) return false;
  const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
  std::nth_element(steps.begin(), middle, steps.end());
  return *middle >= Minutes(30);
}

}  // namespace

ClockInstants instants_of(const std::vector<LocalTime>& times, LogClock clock, const Zone& zone) {
  ClockInstants result;
  result.instants.reserve(times.size());
  const bool coarse = is_coarse(times);
  const auto stepped_back_to = [&](Instant t) {
    return !result.instants.empty() && (result.instants.back() > t || (coarse && result.instants.back() == t));
  };
  for (std::size_t i = 0; i < times.size(); ++i) {
    const LocalTime t = times[i];
    if (clock != LogClock::shop) {
      result.instants.emplace_back(t.time_since_epoch() - (clock == LogClock::standard ? standard_offset(zone, t) : seconds(0)));
      continue;
    }
    Instant instant = zone.to_instant(t);
    if (zone.to_local(instant) != t) {
      instant = Instant(t.time_since_epoch()) - zone.offset(instant - seconds(1));
      result.never.push_back(i);
    } else if (const auto second = second_instant(zone, t, instant); second && stepped_back_to(instant)) {
      instant = *second;
      result.second.push_back(i);
    }
    result.instants.push_back(instant);
  }
  return result;
}

}  // namespace coatday::climate
