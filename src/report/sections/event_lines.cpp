// One step as it stands in its day.
#include <algorithm>

#include "report/sections/event_facts.h"
#include "report/sections/sections.h"

namespace coatday::report {
namespace {

constexpr int name_column = 15;
constexpr int name_width = 22;
constexpr int detail_column = 17;

Lines details(const job::Event& event, const EventFacts& facts, const TextStyle& style) {
  Lines lines;
  const auto add = [&](const Text& text) {
    if (!text.empty()) append(lines, hang(spaces(detail_column), text, style));
  };
  add(facts.ends);
  add(event.note);
  add(facts.surface);
  add(facts.wet);
  if (!facts.next.empty()) add(Text("next: ", Mark::faint) + facts.next);
  add(facts.last);
  add(facts.resting);
  add(facts.vapour);
  if (!facts.cautions.empty()) add(Text("! " + joined(facts.cautions, "; "), Mark::caution));
  return lines;
}

}  // namespace

Lines event_lines(const job::Plan& plan, const job::Event& event, const TextStyle& style) {
  const EventFacts facts = event_facts(plan, event, style.units);
  const LocalTime start = plan.shop.zone.to_local(event.start);
  const std::string span = format_hours_minutes(ceil_minutes(event.end - event.start));
  const Text head = "  " + Text(clock_time(start)) + padded(span, 6, Align::right) + "  ";
  const Lines names = wrap(Text(event.name, event.done ? Mark::faint : Mark::strong), name_width);
  const int right_column = name_column + name_width + 2;
  Lines right = wrap(facts.subject, style.columns - right_column);
  if (right.front().empty()) right.clear();
  append(right, wrap(Text(facts.how, Mark::faint), style.columns - right_column));
  Lines lines;
  for (std::size_t i = 0; i < std::max(names.size(), right.size()); ++i) {
    const Text left = (i == 0 ? head : spaces(name_column)) + padded(i < names.size() ? names[i] : Text(), name_width + 2);
    lines.push_back(left + (i < right.size() ? right[i] : Text()));
  }
  append(lines, details(event, facts, style));
  return lines;
}

}  // namespace coatday::report
