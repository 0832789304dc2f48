#include "input/spans.h"

#include <fmt/core.h>

#include <algorithm>

#include "input/amounts.h"
#include "input/mistakes.h"

namespace coatday::input {
namespace {

Parsed<HoursOfDay> parse_stretch(std::string_view typed) {
  const auto ends = split(typed, "-");
  if (ends.size() != 2) return wrong_value(typed, "hours such as 08:00-12:00");
  const auto from = parse_clock_time(ends[0]);
  const auto until = parse_clock_time(ends[1]);
  if (!from) return tl::make_unexpected(from.error());
  if (!until) return tl::make_unexpected(until.error());
  if (*from >= *until) return tl::make_unexpected(fmt::format("{} ends before it starts", in_quotes(typed)));
  return HoursOfDay{*from, *until};
}

Parsed<climate::HeatedHours> parse_heated_stretch(std::string_view typed) {
  const auto parts = split(typed, " at ");
  if (parts.size() != 2) return wrong_value(typed, "hours and a temperature, such as 07:00-18:00 at 20 °C");
  const auto hours = parse_stretch(parts[0]);
  if (!hours) return tl::make_unexpected(hours.error());
  const auto temperature = parse_air_temperature(parts[1]);
  if (!temperature) return tl::make_unexpected(temperature.error());
  return climate::HeatedHours{hours->from, hours->until, *temperature};
}

// Comma-separated stretches, in order of time. None may overlap.
template <class T>
Parsed<std::vector<T>> parse_stretches(std::string_view typed, Parsed<T> (*parse)(std::string_view)) {
  std::vector<T> all;
  for (const std::string_view text : split(typed, ",")) {
    const auto one = parse(text);
    if (!one) return tl::make_unexpected(one.error());
    all.push_back(*one);
  }
  std::ranges::sort(all, {}, &T::from);
  const auto overlap = std::ranges::adjacent_find(all, [](const T& a, const T& b) { return a.until > b.from; });
  if (overlap != all.end()) return tl::make_unexpected(fmt::format("hours overlap in {}", in_quotes(typed)));
  return all;
}

Parsed<std::vector<weekday>> parse_day_range(std::string_view typed) {
  const auto ends = split(typed, "-");
  if (ends.size() > 2) return wrong_value(typed, "a day or a range of days, such as mon-fri");
  const auto first = parse_weekday(ends.front());
  const auto last = parse_weekday(ends.back());
  if (!first) return tl::make_unexpected(first.error());
  if (!last) return tl::make_unexpected(last.error());
  std::vector<weekday> days{*first};
  while (days.back() != *last) days.push_back(days.back() + date::days(1));
  return days;
}

}  // namespace

Parsed<std::vector<HoursOfDay>> parse_hours_of_day(std::string_view typed) { return parse_stretches(typed, parse_stretch); }

Parsed<std::vector<climate::HeatedHours>> parse_heated(std::string_view typed) { return parse_stretches(typed, parse_heated_stretch); }

Parsed<std::vector<weekday>> parse_days(std::string_view typed) {
  std::vector<weekday> all;
  for (const std::string_view text : split(typed, ",")) {
    const auto days = parse_day_range(text);
    if (!days) return tl::make_unexpected(days.error());
    for (const weekday day : *days) {
      if (std::ranges::find(all, day) != all.end()) return tl::make_unexpected(fmt::format("a day stands twice in {}", in_quotes(typed)));
      all.push_back(day);
    }
  }
  return all;
}

Parsed<DateRange> parse_dates(std::string_view typed) {
  const auto ends = split(typed, " to ");
  if (ends.size() > 2) return wrong_value(typed, "a date, or two dates with 'to' between them");
  const auto first = parse_date(ends.front());
  const auto last = parse_date(ends.back());
  if (!first) return tl::make_unexpected(first.error());
  if (!last) return tl::make_unexpected(last.error());
  if (*last < *first) return tl::make_unexpected(fmt::format("the range {} ends before it starts", in_quotes(typed)));
  return DateRange{*first, *last};
}

Parsed<Moment> parse_moment(std::string_view typed) {
  if (trim(typed).size() > 10) return parse_local_time(typed).map([](LocalTime t) { return Moment{t, false}; });
  return parse_date(typed).map([](LocalDay day) { return Moment{LocalTime(day), true}; });
}

}  // namespace coatday::input
