#include "report/document/steps_lines.h"

#include <algorithm>

#include "report/document/phrase_text.h"

namespace coatday::report {
namespace {

constexpr int title_column = 15;
constexpr int title_width = 22;
constexpr int detail_column = 17;
constexpr int narrowest_subject = 20;
constexpr int form_column = 18;  // after box and hours
constexpr int blank_width = 22;  // what is written in by hand, at the right

Text hours_of(const Steps::Step& step, const Zone& zone) {
  const std::string length = format_hours_minutes(ceil_minutes(step.end - step.begin));
  return "  " + Text(clock_time(zone.to_local(step.begin))) + padded(length, 6, Align::right) + "  ";
}

Text caution_text(const std::vector<Phrase>& cautions) {
  Text text("! ", Mark::caution);
  for (const Phrase& caution : cautions)
    text += Text(&caution == &cautions.front() ? "" : "; ", Mark::caution) + text_of(caution, Mark::caution);
  return text;
}

// Two columns of lines; the first line begins with the hours.
Lines side_by_side(const Text& hours, const Lines& left, const Lines& right) {
  Lines lines;
  for (std::size_t i = 0; i < std::max(left.size(), right.size()); ++i) {
    const Text title = padded(i < left.size() ? left[i] : Text(), title_width + 2);
    lines.push_back((i == 0 ? hours : spaces(title_column)) + title + (i < right.size() ? right[i] : Text()));
  }
  return lines;
}

Lines heading_lines(const Steps::Step& step, const Zone& zone, const TextStyle& style) {
  const Text title = text_of(step.title, step.done ? Mark::faint : Mark::strong);
  const Text hours = hours_of(step, zone);
  const int room = style.columns - title_column - title_width - 2;
  Lines lines, right;
  const auto add = [&](const Text& text) {
    if (text.empty()) return;
    append(right, room < narrowest_subject ? hang(spaces(detail_column), text, style) : wrap(text, room));
  };
  add(text_of(step.subject));
  add(text_of(step.how, Mark::faint));
  if (room >= narrowest_subject) return side_by_side(hours, wrap(title, title_width), right);
  lines = hang(hours, title, style);
  append(lines, right);
  return lines;
}

// A box, hours and title, with what is written in by hand at the right; the rest stands below.
Lines form_lines(const Steps::Step& step, const Zone& zone, const TextStyle& style) {
  const auto clock = [&zone](Instant t) { return clock_time(zone.to_local(t)); };
  const std::string hours = clock(step.begin) + "-" + clock(step.end);
  const int narrow = style.columns - form_column - blank_width - 1;
  Lines body = wrap(text_of(step.title), narrow);
  if (!step.subject.empty()) append(body, wrap(text_of(step.subject), narrow));
  Lines lines;
  for (std::size_t i = 0; i < std::max(body.size(), step.blanks.size()); ++i) {
    Text line = i == 0 ? padded(Text(step.done ? "[x]  " : "[ ]  ") + hours, form_column) : spaces(form_column);
    if (i < body.size()) line += body[i];
    if (i < step.blanks.size())
      line = padded(line, style.columns - blank_width) + padded(text_of(step.blanks[i]), blank_width, Align::right);
    lines.push_back(line);
  }
  for (const Phrase& detail : step.details) {
    if (!detail.empty()) append(lines, hang(spaces(form_column), text_of(detail), style));
  }
  if (!step.cautions.empty()) append(lines, hang(spaces(form_column), caution_text(step.cautions), style));
  lines.emplace_back();
  return lines;
}

Lines step_lines(const Steps::Step& step, const Zone& zone, const TextStyle& style) {
  if (!step.blanks.empty()) return form_lines(step, zone, style);
  Lines lines = heading_lines(step, zone, style);
  for (const Phrase& detail : step.details) {
    if (!detail.empty()) append(lines, hang(spaces(detail_column), text_of(detail), style));
  }
  if (!step.cautions.empty()) append(lines, hang(spaces(detail_column), caution_text(step.cautions), style));
  return lines;
}

Lines wait_lines(const Steps::Step& wait, bool first, const Zone& zone, const TextStyle& style) {
  if (wait.end > wait.begin)
    return hang(hours_of(wait, zone) + text_of(wait.title, Mark::faint) + Text(": ", Mark::faint), text_of(wait.subject), style);
  const Text label = first ? text_of(wait.title, Mark::faint) + Text(":", Mark::faint) : Text();
  return hang("  " + padded(label, title_column - 2), text_of(wait.subject), style);
}

}  // namespace

Lines steps_lines(const Steps& steps, const TextStyle& style) {
  Lines lines;
  bool after_work = false;
  for (const Steps::Step& step : steps.steps) {
    const bool wait = step.key.empty();
    append(lines, wait ? wait_lines(step, !after_work, steps.zone, style) : step_lines(step, steps.zone, style));
    after_work = wait && step.end <= step.begin;
  }
  return lines;
}

}  // namespace coatday::report
