#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "report/sections.h"
#include "report/words.h"

namespace coatday::report {
namespace {

struct Day {
  LocalDay date;
  Instant midnight, next_midnight;
  std::vector<const plan::Event*> events;
  std::vector<shop::WorkingTime> shifts;
};

std::vector<Day> calendar(const plan::Plan& plan) {
  const Zone& zone = plan.shop.zone;
  LocalDay last = local_day(plan.events.front().start, zone);
  for (const plan::Event& event : plan.events) last = std::max(last, local_day(event.start, zone));
  std::vector<Day> days;
  for (LocalDay date = local_day(plan.events.front().start, zone); date <= last; date += date::days(1)) {
    days.push_back({date, zone.to_instant(LocalTime(date)), zone.to_instant(LocalTime(date + date::days(1))), {}, {}});
  }
  const auto index = [&](Instant t) { return static_cast<std::size_t>((local_day(t, zone) - days.front().date).count()); };
  for (const plan::Event& event : plan.events) days[index(event.start)].events.push_back(&event);
  for (const shop::WorkingTime& shift : plan.working) {
    if (shift.begin >= days.front().midnight && shift.begin < days.back().next_midnight) days[index(shift.begin)].shifts.push_back(shift);
  }
  return days;
}

struct Span {
  Instant from, until;
};

// From the start of work to its end, whether planned or not.
Span working_span(const Day& day) {
  Span span{day.events.front()->start, day.events.front()->end};
  for (const plan::Event* event : day.events) span.until = std::max(span.until, event->end);
  for (const shop::WorkingTime& shift : day.shifts) span = {std::min(span.from, shift.begin), std::max(span.until, shift.end)};
  span.until = std::min(span.until, day.next_midnight);
  return span;
}

// Until work starts on the day after, or until midnight when it does not.
Instant night_end(const Day& day, const Day* next) {
  if (next == nullptr || next->shifts.empty()) return day.next_midnight;
  return next->shifts.front().begin;
}

Lines heading(const plan::Plan& plan, const Day& day, const Day* next, const Look& look) {
  const Span work = working_span(day);
  const auto clock = [&plan](Instant t) { return clock_time(plan.shop.zone.to_local(t)); };
  Text body(fmt::format("{}-{}", clock(work.from), clock(work.until)));
  if (const auto air = air_words(plan.air, work.from, work.until, look.units)) body += " at " + *air;
  if (const auto air = air_words(plan.air, work.until, night_end(day, next), look.units)) body += "; night " + *air;
  return hang(Text(date_words(day.date), Ink::strong) + "  ", body, look);
}

Lines work_lines(const plan::Plan& plan, const Day& day, const Look& look) {
  Lines lines;
  Instant busy_until = std::min(day.events.front()->start, working_span(day).from);
  if (day.midnight <= plan.from && plan.from < day.next_midnight) busy_until = std::max(busy_until, plan.from);
  for (const plan::Event* event : day.events) {
    if (event->start > busy_until) append(lines, idle_lines(plan, busy_until, event->start, look));
    append(lines, event_lines(plan, *event, look));
    busy_until = std::max(busy_until, event->end);
  }
  append(lines, night_lines(plan, busy_until, look));
  return lines;
}

Text date_span(LocalDay first, LocalDay last) {
  if (first == last) return {date_words(first), Ink::strong};
  return Text(date_words(first), Ink::strong) + Text(unbroken(" - "), Ink::strong) + Text(date_words(last), Ink::strong);
}

Lines quiet_days(const plan::Plan& plan, const std::vector<Day>& days, std::size_t first, std::size_t last, const Look& look) {
  const Instant from = days[first].midnight;
  const Instant until = days[last].next_midnight;
  const bool closed = days[first].shifts.empty();
  Text body(closed ? "closed" : "no work on this order");
  if (const auto air = air_words(plan.air, from, until, look.units)) body += "; " + *air;
  if (anything_dries(plan, from, until)) body += "; drying goes on";
  return hang(date_span(days[first].date, days[last].date) + "  ", body, look);
}

}  // namespace

Lines days(const plan::Plan& plan, const Look& look) {
  if (plan.events.empty()) return {};
  const std::vector<Day> all = calendar(plan);
  Lines lines;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (!lines.empty()) lines.emplace_back();
    if (!all[i].events.empty()) {
      append(lines, heading(plan, all[i], i + 1 < all.size() ? &all[i + 1] : nullptr, look));
      append(lines, work_lines(plan, all[i], look));
      continue;
    }
    const std::size_t first = i;
    while (i + 1 < all.size() && all[i + 1].events.empty() && all[i + 1].shifts.empty() == all[first].shifts.empty()) ++i;
    append(lines, quiet_days(plan, all, first, i, look));
  }
  return lines;
}

}  // namespace coatday::report
