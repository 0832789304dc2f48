#include "climate/epw.h"

#include <fmt/core.h>

#include <algorithm>
#include <charconv>
#include <utility>

namespace coatday::climate {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr int most_header_lines = 40;  // comments that were broken into lines
constexpr std::array<std::string_view, 7> header_words{
    "LOCATION,", "DESIGN CONDITIONS", "TYPICAL/EXTREME PERIODS", "GROUND TEMPERATURES", "HOLIDAYS/DAYLIGHT", "COMMENTS ", "DATA PERIODS"};

enum Field : std::size_t { year = 0, month = 1, day = 2, hour = 3, minute = 4, dry_bulb = 6, humidity = 8, pressure = 9, needed = 10 };
using Fields = std::array<std::string_view, needed>;

bool starts_with_word(std::string_view text, std::string_view upper_case) {
  if (text.size() < upper_case.size()) return false;
  return std::equal(upper_case.begin(), upper_case.end(), text.begin(),
                    [](char a, char b) { return a == (b >= 'a' && b <= 'z' ? static_cast<char>(b - 'a' + 'A') : b); });
}

/// The first fields of a line, and how many it has in all as far as they count.
std::size_t split(std::string_view line, Fields& fields) {
  std::size_t count = 0;
  while (count < fields.size()) {
    const auto comma = std::min(line.find(','), line.size());
    fields.at(count++) = trimmed(line.substr(0, comma));
    if (comma == line.size()) break;
    line.remove_prefix(comma + 1);
  }
  return count;
}

/// A line of data begins with a year, and has fields.
bool is_record(std::string_view line) {
  return !line.empty() && line.front() >= '0' && line.front() <= '9' && std::count(line.begin(), line.end(), ',') >= 5;
}

class EpwReader {
 public:
  explicit EpwReader(std::string_view text) : text_(text) {
    if (text_.starts_with(byte_order_mark)) at_ = byte_order_mark.size();
  }

  tl::expected<WeatherYear, ReadError> read() {
    bool more = read_header();
    for (; more && !error_; more = next_line())
      if (!line_.empty()) read_record();
    if (error_) return tl::unexpected(*std::move(error_));
    return records_.finish(altitude_, number_).map([&](WeatherYear&& year) {
      year.utc_offset = Hours(utc_offset_);
      year.place = place_;
      return std::move(year);
    });
  }

 private:
  bool next_line() {
    if (at_ >= text_.size()) return false;
    const auto end = std::min(text_.find('\n', at_), text_.size());
    line_ = trimmed(text_.substr(at_, end - at_));
    at_ = end + 1;
    ++number_;
    return true;
  }

  /// Whether the first record is reached. The header's lines may stand in any order, and all may be left out but the first.
  bool read_header() {
    bool located = false;
    bool more = next_line();
    for (; more && number_ <= most_header_lines && !is_record(line_); more = next_line()) {
      if (starts_with_word(line_, "COMMENTS")) records_.read_about(line_);
      if (!starts_with_word(line_, "LOCATION,")) continue;
      read_location();
      located = true;
    }
    if (!located) {
      fail(line_, "no line LOCATION comes before the first record; expected one with place, hours from UTC and elevation");
    } else if (!more || !is_record(line_)) {
      fail(line_, "no record follows the header; expected lines of 35 fields that begin with year, month, day, hour, minute");
    }
    return more;
  }

  void read_location() {
    Fields fields;
    const std::size_t count = split(line_, fields);
    constexpr std::size_t name = 1, source = 4, offset = 8, elevation = 9;
    if (count > source) records_.read_about(fields.at(source));
    place_ = printable(fields.at(name));
    const auto hours = count > offset ? decimal(fields.at(offset)) : std::nullopt;
    if (!hours || std::abs(*hours) > 14) {
      return fail(count > offset ? fields.at(offset) : line_,
                  fmt::format("the hours from UTC, field 9 of LOCATION, are {}; expected -14 to 14", shown(fields.at(offset))));
    }
    utc_offset_ = *hours;
    const auto metres = count > elevation ? decimal(fields.at(elevation)) : std::nullopt;
    if (metres && *metres > -500 && *metres < 6000) altitude_ = Metres(*metres);
  }

  void read_record() {
    Fields fields;
    const std::size_t count = split(line_, fields);
    if (count <= humidity) return fail(line_, fmt::format("{} fields; expected 35, of which at least 9", count));
    WeatherRecord record{year_of(fields.at(year)),
                         whole(fields, month, 1, 12),
                         whole(fields, day, 1, 31),
                         whole(fields, hour, 1, 24),
                         whole(fields, minute, 0, 60),
                         std::nullopt,
                         std::nullopt,
                         std::nullopt,
                         number_};
    if (const auto t =
            value(fields[dry_bulb], 99.9, {-70, 70, "the dry-bulb temperature, field 7,", "-70 to 70 °C, or 99.9 where it is missing"}))
      record.temperature = Celsius(*t);
    const auto rh = value(fields[humidity], 999, {0, 110, "the relative humidity, field 9,", "0 to 110 %, or 999 where it is missing"});
    if (rh && *rh > 0) record.humidity = RelativeHumidity(std::min(*rh / 100, 1.0));
    if (count > pressure) {
      const auto p =
          value(fields[pressure], 999999, {31000, 120000, "the pressure, field 10,", "31000 to 120000 Pa, or 999999 where it is missing"});
      if (p) record.pressure = Pascals(*p);
    }
    if (error_) return;
    if (auto wrong = records_.add(record)) fail(line_, *std::move(wrong));
  }

  static std::optional<int> year_of(std::string_view text) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() && end == text.data() + text.size() && value > 0 ? std::optional(value) : std::nullopt;
  }

  int whole(const Fields& fields, Field field, int low, int high) {
    const std::string_view text = fields.at(field);
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error == std::errc() && end == text.data() + text.size() && value >= low && value <= high) return value;
    constexpr std::array names{"year", "month", "day", "hour", "minute"};
    fail(text,
         fmt::format("the {}, field {}, is {}; expected a whole number from {} to {}", names.at(field), field + 1, shown(text), low, high));
    return low;
  }

  struct Allowed {
    double low, high;
    std::string_view name, expected;
  };
  /// None where the field is empty or holds its mark for missing, or after noting an error.
  std::optional<double> value(std::string_view text, double missing, const Allowed& allowed) {
    if (text.empty()) return std::nullopt;
    const auto number = decimal(text);
    if (number && *number >= missing - 1e-9) return std::nullopt;
    if (number && *number >= allowed.low && *number <= allowed.high) return number;
    fail(text, fmt::format("{} is {}; expected {}", allowed.name, shown(text), allowed.expected));
    return std::nullopt;
  }

  /// `where` is a part of the text, or empty and of nothing.
  void fail(std::string_view where, std::string message) {
    if (error_) return;
    const bool inside = where.data() >= text_.data() && where.data() <= text_.data() + text_.size();
    const auto byte = inside ? static_cast<std::size_t>(where.data() - text_.data()) : std::min(at_, text_.size());
    error_ = error_at(text_, byte, std::move(message));
  }

  std::string_view text_, line_;
  std::size_t at_ = 0;
  int number_ = 0;
  WeatherGatherer records_;
  double utc_offset_ = 0;
  std::optional<Metres> altitude_;
  std::string place_;
  std::optional<ReadError> error_;
};

}  // namespace

bool is_epw(std::string_view text) {
  if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
  constexpr std::ptrdiff_t most_of_a_table = 25;  // commas of a line
  const std::string_view line = text.substr(0, text.find('\n'));
  return std::any_of(header_words.begin(), header_words.end(), [&](std::string_view word) { return starts_with_word(text, word); }) ||
         (is_record(line) && std::count(line.begin(), line.end(), ',') > most_of_a_table);
}

tl::expected<WeatherYear, ReadError> read_epw(std::string_view text) {
  if (auto error = unreadable_lines(text)) return tl::unexpected(*std::move(error));
  return EpwReader(text).read();
}

}  // namespace coatday::climate
