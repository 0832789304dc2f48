#include "quantity/time_parse.h"

#include <fmt/core.h>

#include <array>
#include <string>

#include "quantity/nearest.h"
#include "quantity/text_scan.h"

namespace coatday {
namespace {

constexpr int first_year = 2000;

bool digit(char c) { return c >= '0' && c <= '9'; }

// Whether the text is the pattern, in which 0 stands for any digit. The shape is checked before the value: date::parse would take 26-3-8 for
// the year 26.
bool has_shape(std::string_view text, std::string_view pattern) {
  if (text.size() != pattern.size()) return false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (pattern[i] == '0' ? !digit(text[i]) : text[i] != pattern[i]) return false;
  }
  return true;
}

// Only called on digits, four at most.
int number(std::string_view digits) {
  int value = 0;
  for (const char c : digits) value = value * 10 + (c - '0');
  return value;
}

year_month_day calendar_day(std::string_view text) {
  return date::year(number(text.substr(0, 4))) / date::month(static_cast<unsigned>(number(text.substr(5, 2)))) /
         date::day(static_cast<unsigned>(number(text.substr(8, 2))));
}

}  // namespace

tl::expected<LocalDay, std::string> parse_date(std::string_view typed) {
  const std::string text = text::plain(typed);
  if (!has_shape(text, "0000-00-00")) {
    return tl::make_unexpected(fmt::format("{} is not a date; expected YYYY-MM-DD such as 2027-01-11", text::quoted(typed)));
  }
  const year_month_day ymd = calendar_day(text);
  if (!ymd.ok())
    return tl::make_unexpected(fmt::format("{} is not in the calendar; expected a date such as 2027-01-11", text::quoted(typed)));
  const int year = static_cast<int>(ymd.year());
  if (year < first_year || year > last_year) {
    return tl::make_unexpected(
        fmt::format("{} is out of range; expected a date from {} to {}", text::quoted(typed), first_year, last_year));
  }
  return LocalDay(ymd);
}

tl::expected<Minutes, std::string> parse_clock_time(std::string_view typed) {
  const std::string text = text::plain(typed);
  if (has_shape(text, "00:00") || has_shape(text, "0:00")) {
    const std::size_t colon = text.find(':');
    const int minute = number(std::string_view(text).substr(colon + 1));
    const int total = 60 * number(std::string_view(text).substr(0, colon)) + minute;
    if (minute < 60 && total <= 24 * 60) return Minutes(total);
  }
  return tl::make_unexpected(fmt::format("{} is not a time of day; expected HH:MM from 00:00 to 24:00", text::quoted(typed)));
}

tl::expected<LocalTime, std::string> parse_local_time(std::string_view typed) {
  const std::string text = text::plain(typed);
  if (text.size() < 11 || (text[10] != ' ' && text[10] != 'T')) {
    return tl::make_unexpected(fmt::format("{} is not a date and time; expected one such as 2027-01-11 08:00", text::quoted(typed)));
  }
  const auto day = parse_date(std::string_view(text).substr(0, 10));
  if (!day) return tl::make_unexpected(day.error());
  const auto clock = parse_clock_time(std::string_view(text).substr(11));
  if (!clock) return tl::make_unexpected(clock.error());
  return LocalTime(*day) + *clock;
}

tl::expected<Instant, std::string> parse_iso8601(std::string_view typed) {
  const auto wrong = [&] {
    return tl::make_unexpected(fmt::format("{} is not an instant; expected one such as 2027-01-11T08:00:00-06:00", text::quoted(typed)));
  };
  const bool west = has_shape(typed, "0000-00-00T00:00:00-00:00");
  if (!west && !has_shape(typed, "0000-00-00T00:00:00+00:00")) return wrong();
  const auto local = parse_local_time(typed.substr(0, 16));
  const auto offset = parse_clock_time(typed.substr(20));
  const int seconds = number(typed.substr(17, 2));
  if (!local || !offset || seconds >= 60) return wrong();
  return Instant(local->time_since_epoch()) + std::chrono::seconds(seconds) - (west ? -*offset : *offset);
}

tl::expected<weekday, std::string> parse_weekday(std::string_view typed) {
  static const std::array<std::string, 7> names{"sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"};
  std::string text = text::plain(typed);
  for (char& c : text) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  for (unsigned i = 0; i < names.size(); ++i) {
    if (text == names[i] || text == names[i].substr(0, 3)) return weekday(i);
  }
  if (const auto meant = nearest_word(text, names)) {
    return tl::make_unexpected(fmt::format("{} is not a day of the week; did you mean '{}'?", text::quoted(typed), *meant));
  }
  return tl::make_unexpected(fmt::format("{} is not a day of the week; expected one such as mon or monday", text::quoted(typed)));
}

}  // namespace coatday
