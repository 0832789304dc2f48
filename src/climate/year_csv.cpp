#include "climate/year_csv.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <string>
#include <system_error>

namespace coatday::climate {
namespace {

constexpr std::size_t hours_in_year = 8760;
constexpr std::string_view header = "month,day,hour,t_C,rh_pct";
constexpr std::string_view pressure_column = ",p_hPa";
constexpr std::string_view offset_word = "utc_offset_h";
constexpr std::array days_before_month{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365};

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t\r");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

/// What was found, fit to print: short and without control characters.
std::string shown(std::string_view text) {
  constexpr std::size_t longest = 24;
  std::string result = "'";
  for (const char c : text.substr(0, longest)) result += c >= ' ' && c <= '~' ? c : '?';
  return result + (text.size() > longest ? "...'" : "'");
}

template <class Number>
std::optional<Number> number(std::string_view text) {
  Number value{};
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return value;
}

template <class Number>
struct Column {
  std::string_view name;
  Number low, high;
  std::string_view expected;
};
constexpr Column<int> month_column{"month", 1, 12, "a whole number from 1 to 12"};
constexpr Column<int> day_column{"day", 1, 31, "a whole number from 1 to 31"};
constexpr Column<int> hour_column{"hour", 1, 24, "the hour's end, a whole number from 1 to 24"};
constexpr Column<double> temperature_column{"t_C", -90, 60, "a temperature from -90 to 60 °C"};
constexpr Column<double> humidity_column{"rh_pct", 0.1, 100, "a relative humidity from 0.1 to 100 %"};
constexpr Column<double> air_pressure_column{"p_hPa", 400, 1100, "a pressure from 400 to 1100 hPa"};
constexpr Column<double> offset_column{offset_word, -14, 14, "hours from UTC, -14 to 14"};

class Reader {
 public:
  tl::expected<YearCsv, CsvError> read(std::string_view text) {
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    if (text.substr(0, byte_order_mark.size()) == byte_order_mark) text.remove_prefix(byte_order_mark.size());
    while (!text.empty() && !error_) {
      const auto end = std::min(text.find('\n'), text.size());
      ++line_;
      read_line(trimmed(text.substr(0, end)));
      text.remove_prefix(std::min(end + 1, text.size()));
    }
    if (!error_) finish();
    if (error_) return tl::unexpected(std::move(*error_));
    return std::move(csv_);
  }

 private:
  void read_line(std::string_view line) {
    if (line.empty()) return;
    if (line.front() == '#') return read_comment(line);
    if (!header_seen_) return read_header(line);
    read_row(line);
  }

  void read_comment(std::string_view line) {
    const auto word = line.find(offset_word);
    if (word == std::string_view::npos) return;
    line = trimmed(line.substr(word + offset_word.size()));
    line = line.substr(0, line.find_first_of(" \t,;"));
    if (line.size() > 1 && line[0] == '+' && line[1] != '-') line.remove_prefix(1);  // from_chars knows no '+'
    csv_.utc_offset = Hours(field(line, offset_column));
    offset_seen_ = true;
  }

  void read_header(std::string_view line) {
    header_seen_ = true;
    pressure_given_ = line.size() > header.size() && line.substr(header.size()) == pressure_column;
    if (line.substr(0, header.size()) != header || (line.size() != header.size() && !pressure_given_))
      fail(shown(line) + " is not the header; expected " + std::string(header) + " or the same with " + std::string(pressure_column));
  }

  void read_row(std::string_view line) {
    std::array<std::string_view, 6> fields;
    const std::size_t expected = pressure_given_ ? 6 : 5;
    const auto found = static_cast<std::size_t>(std::count(line.begin(), line.end(), ',')) + 1;
    if (found != expected) return fail(std::to_string(found) + " fields; expected " + std::to_string(expected));
    for (std::size_t i = 0; i < expected; ++i) {
      const auto comma = std::min(line.find(','), line.size());
      fields[i] = trimmed(line.substr(0, comma));
      line.remove_prefix(std::min(comma + 1, line.size()));
    }
    const int month = field(fields[0], month_column), day = field(fields[1], day_column), hour = field(fields[2], hour_column);
    const Air air{Celsius(field(fields[3], temperature_column)), RelativeHumidity(field(fields[4], humidity_column) / 100)};
    if (pressure_given_) pressure_sum_ += field(fields[5], air_pressure_column);
    if (!error_) store(month, day, hour, air);
  }

  void store(int month, int day, int hour, const Air& air) {
    const auto index = static_cast<std::size_t>(month);
    const int days = days_before_month[index] - days_before_month[index - 1];
    if (day > days) return fail("month " + std::to_string(month) + " has no day " + std::to_string(day) + " in a year of 365 days");
    const auto at = hour_of_year(date::month(static_cast<unsigned>(month)), date::day(static_cast<unsigned>(day)), hour - 1);
    int& first = first_line_[at];
    if (first != 0) {
      return fail("month " + std::to_string(month) + ", day " + std::to_string(day) + ", hour " + std::to_string(hour) +
                  " again; it was given in line " + std::to_string(first));
    }
    first = line_;
    csv_.hours[at] = air;
  }

  void finish() {
    line_ = std::max(line_, 1);
    if (!header_seen_) return fail("the file has no rows; expected the header " + std::string(header));
    if (!offset_seen_) return fail("no comment line holds the offset from UTC; expected one such as '# utc_offset_h -6'");
    const auto missing = std::count(first_line_.begin(), first_line_.end(), 0);
    if (missing != 0) return fail_missing(missing);
    if (pressure_given_) csv_.mean_pressure = Pascals(100 * pressure_sum_ / static_cast<double>(hours_in_year));
  }

  void fail_missing(std::ptrdiff_t missing) {
    const auto at = static_cast<int>(std::find(first_line_.begin(), first_line_.end(), 0) - first_line_.begin());
    const auto next_month = std::upper_bound(days_before_month.begin(), days_before_month.end(), at / 24);
    const auto month = next_month - days_before_month.begin();
    const int day = at / 24 - *(next_month - 1) + 1;
    fail(std::to_string(missing) + " of 8760 hours are missing; the first is month " + std::to_string(month) + ", day " +
         std::to_string(day) + ", hour " + std::to_string(at % 24 + 1));
  }

  /// The value, or the column's lowest after noting an error.
  template <class Number>
  Number field(std::string_view text, const Column<Number>& column) {
    const auto value = number<Number>(text);
    if (value && *value >= column.low && *value <= column.high) return *value;
    fail(std::string(column.name) + " is " + shown(text) + "; expected " + std::string(column.expected));
    return column.low;
  }

  void fail(std::string message) {
    if (!error_) error_ = CsvError{line_, std::move(message)};
  }

  YearCsv csv_{std::vector<Air>(hours_in_year), Hours(0), std::nullopt};
  std::vector<int> first_line_ = std::vector<int>(hours_in_year, 0);
  std::optional<CsvError> error_;
  double pressure_sum_ = 0;
  int line_ = 0;
  bool header_seen_ = false, pressure_given_ = false, offset_seen_ = false;
};

}  // namespace

std::size_t hour_of_year(date::month month, date::day day, int hour) {
  const int days = days_before_month[static_cast<unsigned>(month) - 1] + static_cast<int>(static_cast<unsigned>(day)) - 1;
  return std::size_t{24} * static_cast<std::size_t>(days) + static_cast<std::size_t>(hour);
}

tl::expected<YearCsv, CsvError> read_year(std::string_view text) { return Reader().read(text); }

}  // namespace coatday::climate
