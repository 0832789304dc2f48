#include "input/work.h"

#include <fmt/core.h>

#include <algorithm>

#include "input/amounts.h"
#include "input/choices.h"

namespace coatday::input {
namespace {

// A day as a limit takes in that day.
auto last_moment_in(const Zone& zone) {
  return [&zone](std::string_view typed) {
    return parse_moment(typed).map([&zone](const Moment& m) { return zone.to_instant(m.whole_day ? m.time + date::days(1) : m.time); });
  };
}

void read_window(const Fields& fields, const Zone& zone, shop::Work& work) {
  fields.take("start", work.start, instant_in(zone));
  const bool has_first = fields.take("not before", work.not_before, instant_in(zone));
  const bool has_last = fields.take("not after", work.not_after, last_moment_in(zone));
  for (const char* key : {"not before", "not after"}) {
    if (fields.has("start") && fields.has(key)) fields.mistake(key, fmt::format("work with a fixed 'start' has no '{}'", key));
  }
  if (has_first && has_last && *work.not_before >= *work.not_after) fields.mistake("not after", "'not after' comes before 'not before'");
}

std::optional<Minutes> last_shift_end(const shop::Shop& shop, weekday day) {
  std::optional<Minutes> end;
  for (const shop::Shift& shift : shop.week) {
    if (shift.day == day) end = std::max(end.value_or(shift.until), shift.until);
  }
  return end;
}

}  // namespace

shop::Work read_work(const Fields& fields, const shop::Shop& shop) {
  shop::Work work;
  work.where = fields.where();
  fields.must("name", work.name, parse_name);
  fields.must("takes", work.takes, parse_some_time);
  fields.take("dust", work.dust, parse_dust);
  fields.take("hot", work.hot, parse_yes_no);
  fields.take("may pause", work.may_pause, parse_yes_no);
  fields.take("rest", work.rest, parse_duration);
  if (fields.take("people", work.people, parse_positive_count) && work.people > shop.people) {
    fields.mistake("people", fmt::format("this takes {} people; the shop has {}", work.people, shop.people));
  }
  read_window(fields, shop.zone, work);
  return work;
}

Instant end_of_work(const shop::Shop& shop, LocalDay day) {
  constexpr int longest_closure = 366;  // days; longer ones are no holiday
  for (int back = 0; back < longest_closure; ++back) {
    const LocalDay earlier = day - date::days(back);
    const auto end = last_shift_end(shop, weekday(date::sys_days(earlier.time_since_epoch())));
    if (end && !std::ranges::binary_search(shop.closed, earlier)) return shop.zone.to_instant(LocalTime(earlier) + *end);
  }
  return shop.zone.to_instant(LocalTime(day + date::days(1)));
}

}  // namespace coatday::input
