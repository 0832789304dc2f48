#include "report/sections/day_list.h"

#include <fmt/core.h>

#include <algorithm>

#include "report/sections/waiting.h"
#include "report/words.h"

namespace coatday::report {
namespace {

struct WorkingSpan {
  Instant from, until;
};

// From the start of work to its end, whether planned or not.
WorkingSpan working_span(const Day& day) {
  WorkingSpan span{day.events.front()->start, day.events.front()->end};
  for (const job::Event* event : day.events) span.until = std::max(span.until, event->end);
  for (const shop::WorkingTime& shift : day.shifts) span = {std::min(span.from, shift.begin), std::max(span.until, shift.end)};
  span.until = std::min(span.until, day.next_midnight);
  return span;
}

// Until work starts on the day after, or until midnight when it does not.
Instant night_end(const Day& day, const Day* next) {
  if (next == nullptr || next->shifts.empty()) return day.next_midnight;
  return next->shifts.front().begin;
}

// All but those of pieces that are finished, by start.
std::vector<const job::Event*> open_events(const job::Plan& plan) {
  std::vector<bool> finished(plan.pieces.size());
  for (std::size_t piece = 0; piece < finished.size(); ++piece) finished[piece] = job::is_finished(plan, piece);
  std::vector<const job::Event*> events;
  for (const job::Event& event : plan.events) {
    if (!event.piece || *event.piece >= finished.size() || !finished[*event.piece]) events.push_back(&event);
  }
  return events;
}

}  // namespace

std::vector<Day> day_list(const job::Plan& plan) {
  const std::vector<const job::Event*> events = open_events(plan);
  if (events.empty()) return {};
  const Zone& zone = plan.shop.zone;
  LocalDay last = local_day(events.front()->start, zone);
  for (const job::Event* event : events) last = std::max(last, local_day(event->start, zone));
  std::vector<Day> days;
  for (LocalDay date = local_day(events.front()->start, zone); date <= last; date += date::days(1)) {
    days.push_back({date, zone.to_instant(LocalTime(date)), zone.to_instant(LocalTime(date + date::days(1))), {}, {}});
  }
  const auto index = [&](Instant t) { return static_cast<std::size_t>((local_day(t, zone) - days.front().date).count()); };
  for (const job::Event* event : events) days[index(event->start)].events.push_back(event);
  const auto add = [&](const shop::WorkingTime& shift) {
    if (shift.begin >= days.front().midnight && shift.begin < days.back().next_midnight) days[index(shift.begin)].shifts.push_back(shift);
  };
  // What is done lies on days before the plan's own hours, and those were open, too.
  if (days.front().midnight < plan.from) std::ranges::for_each(shop::working_time(plan.shop, days.front().midnight, plan.from), add);
  std::ranges::for_each(plan.working, add);
  return days;
}

std::vector<DaySpan> day_spans(const std::vector<Day>& days) {
  std::vector<DaySpan> spans;
  for (std::size_t i = 0; i < days.size(); ++i) {
    const bool joins = i > 0 && days[i].events.empty() && days[i - 1].events.empty() && days[i].closed() == days[i - 1].closed();
    if (joins) {
      spans.back().last = i;
    } else {
      spans.push_back({i, i});
    }
  }
  return spans;
}

std::string hours_text(const job::Plan& plan, const Day& day, const Day* next, Units units) {
  const WorkingSpan work = working_span(day);
  const auto clock = [&plan](Instant t) { return clock_time(plan.shop.zone.to_local(t)); };
  std::string words = fmt::format("{}-{}", clock(work.from), clock(work.until));
  if (const auto air = air_text(plan.air, work.from, work.until, units)) words += " at " + *air;
  if (const auto air = air_text(plan.air, work.until, night_end(day, next), units)) words += "; night " + *air;
  return words;
}

std::string quiet_text(const job::Plan& plan, const Day& first, const Day& last, Units units) {
  std::string words = first.closed() ? "closed" : "no work on this order";
  if (const auto air = air_text(plan.air, first.midnight, last.next_midnight, units)) words += "; " + *air;
  if (const std::string cause = first.closed() ? "" : kept_by(plan, last.next_midnight); !cause.empty()) words += "; " + cause;
  if (anything_dries(plan, first.midnight, last.next_midnight)) words += "; drying goes on";
  return words;
}

Instant day_begins(const job::Plan& plan, const Day& day) {
  const Instant opens = std::min(day.events.front()->start, working_span(day).from);
  return day.midnight <= plan.from && plan.from < day.next_midnight ? std::max(opens, plan.from) : opens;
}

}  // namespace coatday::report
