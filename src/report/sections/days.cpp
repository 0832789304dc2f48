#include "report/sections/day_list.h"
#include "report/sections/sections.h"
#include "report/words.h"

namespace coatday::report {
namespace {

constexpr int body_column = 15;

Lines idle_lines(const job::Plan& plan, Instant from, Instant until, const TextStyle& style) {
  const std::string words = idle_words(plan, from, until);
  if (words.empty()) return {};
  const Text head = "  " + Text(clock_time(plan.shop.zone.to_local(from))) +
                    padded(format_hours_minutes(ceil_minutes(until - from)), 6, Align::right) + "  " + Text("wait: ", Mark::faint);
  return hang(head, words, style);
}

Lines night_lines(const job::Plan& plan, Instant from, const TextStyle& style) {
  Lines lines;
  for (const std::string& words : night_words(plan, from)) {
    const Text head = "  " + padded(Text(lines.empty() ? "night:" : "", Mark::faint), body_column - 2);
    append(lines, hang(head, words, style));
  }
  return lines;
}

Lines work_lines(const job::Plan& plan, const Day& day, const TextStyle& style) {
  Lines lines;
  Instant busy_until = day_begins(plan, day);
  for (const job::Event* event : day.events) {
    if (event->start > busy_until) append(lines, idle_lines(plan, busy_until, event->start, style));
    append(lines, event_lines(plan, *event, style));
    busy_until = std::max(busy_until, event->end);
  }
  append(lines, night_lines(plan, busy_until, style));
  return lines;
}

Text date_span(LocalDay first, LocalDay last) {
  if (first == last) return {date_text(first), Mark::strong};
  return Text(date_text(first), Mark::strong) + Text(unbroken(" - "), Mark::strong) + Text(date_text(last), Mark::strong);
}

}  // namespace

Lines days(const job::Plan& plan, const TextStyle& style) {
  const std::vector<Day> all = day_list(plan);
  Lines lines;
  for (const DaySpan& span : day_spans(all)) {
    if (!lines.empty()) lines.emplace_back();
    const Day& first = all[span.first];
    const Day& last = all[span.last];
    const Text date = date_span(first.date, last.date) + "  ";
    if (first.events.empty()) {
      append(lines, hang(date, quiet_words(plan, first, last, style.units), style));
      continue;
    }
    const Day* next = span.last + 1 < all.size() ? &all[span.last + 1] : nullptr;
    append(lines, hang(date, hours_words(plan, first, next, style.units), style));
    append(lines, work_lines(plan, first, style));
  }
  return lines;
}

}  // namespace coatday::report
