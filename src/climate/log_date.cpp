#include "climate/log_date.h"

#include <algorithm>

namespace coatday::climate {
namespace {

using std::chrono::seconds;

bool is_digit(char c) { return c >= '0' && c <= '9'; }
char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }
bool is_letter(char c) { return lower(c) >= 'a' && lower(c) <= 'z'; }

/// Reads what it is asked for from the front of a text, and stays where it is when that is not there.
class Scan {
 public:
  explicit Scan(std::string_view text) : text_(text) {}

  [[nodiscard]] bool done() const { return text_.empty(); }
  bool any_of(std::string_view marks) {
    if (text_.empty() || marks.find(text_.front()) == std::string_view::npos) return false;
    last_ = text_.front();
    text_.remove_prefix(1);
    return true;
  }
  void blanks() {
    while (any_of(" \t,")) {
    }
  }
  [[nodiscard]] char last() const { return last_; }
  std::optional<int> digits(std::size_t most) {
    int value = 0;
    std::size_t count = 0;
    for (; count < text_.size() && is_digit(text_[count]); ++count) {
      if (count == most) return std::nullopt;
      value = value * 10 + (text_[count] - '0');
    }
    if (count == 0) return std::nullopt;
    text_.remove_prefix(count);
    count_ = count;
    return value;
  }
  /// How many digits the last number had.
  [[nodiscard]] std::size_t count() const { return count_; }
  std::string letters() {
    std::string word;
    while (!text_.empty() && is_letter(text_.front())) {
      word += lower(text_.front());
      text_.remove_prefix(1);
    }
    return word;
  }
  /// In any case; nothing is read unless all of it is there.
  bool words(std::string_view lower_case) {
    if (text_.size() < lower_case.size()) return false;
    if (!std::equal(lower_case.begin(), lower_case.end(), text_.begin(), [](char a, char b) { return a == lower(b); })) return false;
    text_.remove_prefix(lower_case.size());
    return true;
  }

 private:
  std::string_view text_;
  char last_ = 0;
  std::size_t count_ = 0;
};

std::optional<int> month_named(const std::string& word) {
  constexpr std::array<std::string_view, 12> names{"january", "february", "march",     "april",   "may",      "june",
                                                   "july",    "august",   "september", "october", "november", "december"};
  if (word.size() < 3) return std::nullopt;
  for (std::size_t i = 0; i < names.size(); ++i)
    if (names.at(i).starts_with(word)) return static_cast<int>(i) + 1;
  return std::nullopt;
}

/// A number, or the name of a month, which then settles the order.
struct DatePart {
  int value = 0;
  std::size_t digits = 0;  // 0: a month's name
};

std::optional<DatePart> date_part(Scan& scan) {
  if (const auto number = scan.digits(4)) return DatePart{*number, scan.count()};
  if (const auto month = month_named(scan.letters())) return DatePart{*month, 0};
  return std::nullopt;
}

bool read_date(Scan& scan, WrittenTime& written) {
  std::array<DatePart, 3> parts{};
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0 && !scan.any_of("-/., ")) return false;
    if (i > 0) scan.blanks();
    const auto part = date_part(scan);
    if (!part) return false;
    parts.at(i) = *part;
  }
  const bool year_first = parts[0].digits == 4;
  const DatePart& year = year_first ? parts[0] : parts[2];
  const DatePart& first = year_first ? parts[1] : parts[0];
  const DatePart& second = year_first ? parts[2] : parts[1];
  if ((year.digits != 4 && year.digits != 2) || first.digits > 2 || second.digits > 2) return false;
  written.year = year.digits == 2 ? 2000 + year.value : year.value;
  written.day_and_month = {first.value, second.value};
  if (year_first || first.digits == 0) written.order = DateOrder::month_first;
  if (second.digits == 0) written.order = DateOrder::day_first;
  if (year_first && second.digits == 0) return false;
  return first.digits > 0 || second.digits > 0;
}

/// 1 to 12 with "AM" or "PM", else 0 to 24.
bool read_clock(Scan& scan, WrittenTime& written) {
  const auto hour = scan.digits(2);
  if (!hour || !scan.any_of(":.")) return false;
  const auto minute = scan.digits(2);
  if (!minute || *minute > 59) return false;
  int second = 0;
  if (scan.any_of(":.")) {
    const auto read = scan.digits(2);
    if (!read || *read > 59) return false;
    second = *read;
    if (scan.any_of(".,") && !scan.digits(9)) return false;
  }
  scan.blanks();
  const bool am = scan.words("am") || scan.words("a.m."), pm = !am && (scan.words("pm") || scan.words("p.m."));
  if ((am || pm) && (*hour < 1 || *hour > 12)) return false;
  const int of_day = am || pm ? *hour % 12 + (pm ? 12 : 0) : *hour;
  written.clock = std::chrono::hours(of_day) + Minutes(*minute) + seconds(second);
  return written.clock <= std::chrono::hours(24);
}

bool read_offset(Scan& scan, WrittenTime& written) {
  scan.blanks();
  const bool utc = scan.words("z") || scan.words("utc") || scan.words("gmt");
  if (utc) written.offset = seconds(0);
  if (!scan.any_of("+-")) return true;
  const bool west = scan.last() == '-';
  const auto hours = scan.digits(4);
  if (!hours) return false;
  int minutes = *hours * 60;
  if (scan.count() > 2) minutes = *hours / 100 * 60 + *hours % 100;
  if (scan.count() <= 2 && scan.any_of(":")) {
    const auto more = scan.digits(2);
    if (!more || *more > 59) return false;
    minutes += *more;
  }
  if (minutes > 14 * 60) return false;
  written.offset = Minutes(west ? -minutes : minutes);
  return true;
}

}  // namespace

std::optional<WrittenTime> read_written_time(std::string_view text) {
  Scan scan(trimmed(text));
  WrittenTime written;
  if (!read_date(scan, written)) return std::nullopt;
  if (!scan.any_of("Tt ,\t")) return std::nullopt;
  scan.blanks();
  if (!read_clock(scan, written) || !read_offset(scan, written)) return std::nullopt;
  scan.blanks();
  if (!scan.done()) return std::nullopt;
  return written;
}

std::optional<seconds> offset_in_name(std::string_view name) {
  for (std::size_t i = 0; i < name.size(); ++i) {
    if (i > 0 && is_letter(name[i - 1])) continue;
    Scan scan(name.substr(i));
    WrittenTime written;
    if (!Scan(name.substr(i)).words("utc") && !Scan(name.substr(i)).words("gmt")) continue;
    if (read_offset(scan, written)) return written.offset;
  }
  return std::nullopt;
}

std::optional<LocalTime> WrittenTime::local(DateOrder found) const {
  constexpr int first_year = 2000;
  const bool month_first = order.value_or(found) == DateOrder::month_first;
  const auto month = static_cast<unsigned>(day_and_month[month_first ? 0 : 1]);
  const auto day = static_cast<unsigned>(day_and_month[month_first ? 1 : 0]);
  const year_month_day date = date::year(year) / date::month(month) / date::day(day);
  if (!date.ok() || year < first_year || year > last_year) return std::nullopt;
  return LocalTime(LocalDay(date)) + clock;
}

}  // namespace coatday::climate
