#include "climate/weather_year.h"

#include <fmt/core.h>

#include <algorithm>
#include <numeric>

#include "climate/column_name.h"
#include "climate/psychrometrics.h"

namespace coatday::climate {
namespace {

constexpr std::array days_before_month{0, 31, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335, 366};
constexpr std::array<const char*, 12> short_month_names{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
constexpr std::size_t leap_day = std::size_t{24} * 59, after_leap_day = leap_day + 24;

struct Named {
  int day;
  const char* month;
  std::size_t hour;  // its end
};

Named named(std::size_t hour_of_year) {
  const int day = static_cast<int>(hour_of_year / 24);
  const auto next = std::upper_bound(days_before_month.begin(), days_before_month.end(), day);
  const auto month = static_cast<std::size_t>(next - days_before_month.begin()) - 1;
  return {day - *(next - 1) + 1, short_month_names.at(month), hour_of_year % 24 + 1};
}

std::string span_text(std::size_t first, std::size_t last) {
  const Named a = named(first), b = named(last);
  if (first == last) return fmt::format("{} {} hour {}", a.day, a.month, a.hour);
  if (a.day == b.day) return fmt::format("{} {} hours {}-{}", a.day, a.month, a.hour, b.hour);
  return fmt::format("{} {} hour {} to {} {} hour {}", a.day, a.month, a.hour, b.day, b.month, b.hour);
}

std::string joined(const std::vector<std::string>& spans) {
  constexpr std::size_t most = 6;
  std::string words;
  for (std::size_t i = 0; i < std::min(spans.size(), most); ++i) words += (i == 0 ? "" : ", ") + spans[i];
  return spans.size() <= most ? words : fmt::format("{} and {} more times", words, spans.size() - most);
}

}  // namespace

/// Hours in a row of the calendar, which goes round: from `first`, `size` of them.
struct WeatherGatherer::Gap {
  std::size_t first = 0;
  std::size_t size = 0;
};

std::optional<double> WeatherGatherer::Sum::mean() const {
  if (count == 0) return std::nullopt;
  return total / count;
}

void YearsTold::read(std::string_view said) {
  std::string lower;
  for (const char c : said) lower += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  // The names of the usual collections of typical years.
  for (const std::string_view word : {"typical", "tmy", "iwec", "cwec", "wyec"}) typical = typical || lower.find(word) != std::string::npos;
}

void YearsTold::add(std::optional<int> year) {
  if (!year) return;
  first = std::min(first.value_or(*year), *year);
  last = std::max(last.value_or(*year), *year);
}

std::string YearsTold::words() const {
  if (typical) return "a typical year";
  if (!first) return "a year that the file does not name";
  return *first == *last ? fmt::format("{}", *first) : fmt::format("{} to {}", *first, *last);
}

std::size_t hour_of_year(date::month month, date::day day, int hour) {
  const int days = days_before_month.at(static_cast<unsigned>(month) - 1) + static_cast<int>(static_cast<unsigned>(day)) - 1;
  return std::size_t{24} * static_cast<std::size_t>(days) + static_cast<std::size_t>(hour);
}

std::optional<std::string> WeatherGatherer::add(const WeatherRecord& record) {
  const auto month = static_cast<std::size_t>(record.month);
  if (record.day > days_before_month.at(month) - days_before_month.at(month - 1))
    return fmt::format("month {} has no day {}", record.month, record.day);
  Hour& hour = hours_.at(
      hour_of_year(date::month(static_cast<unsigned>(record.month)), date::day(static_cast<unsigned>(record.day)), record.hour - 1));
  const std::uint64_t bit = std::uint64_t{1} << static_cast<unsigned>(record.minute);
  if ((hour.minutes & bit) != 0)
    return fmt::format("month {}, day {}, hour {} again; it was given in line {}", record.month, record.day, record.hour, hour.line);
  if (hour.minutes == 0) hour.line = record.line;
  hour.minutes |= bit;
  if (record.temperature) hour.temperature.add(record.temperature->value());
  if (record.humidity) hour.humidity.add(record.humidity->value());
  if (record.pressure) pressure_.add(record.pressure->value());
  years_.add(record.year);
  return std::nullopt;
}

std::vector<std::size_t> WeatherGatherer::calendar() const {
  const bool has_leap_day =
      std::any_of(hours_.begin() + leap_day, hours_.begin() + after_leap_day, [](const Hour& h) { return h.line > 0; });
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < hours_.size(); ++i)
    if (has_leap_day || i < leap_day || i >= after_leap_day) order.push_back(i);
  return order;
}

ReadError WeatherGatherer::too_long(const Gap& gap, std::string_view what, const std::vector<std::size_t>& order, int last_line) const {
  const auto line_of = [&](std::size_t i) { return hours_[order[i]].line; };
  int line = line_of(gap.first);
  for (std::size_t i = gap.first; line == 0 && i > 0; --i) line = line_of(i - 1);  // the last before the gap, or the first after it
  for (std::size_t i = gap.first; line == 0 && i < order.size(); ++i) line = line_of(i);
  if (line == 0) line = last_line;
  const Named first = named(order[gap.first]);
  return {line, 1,
          fmt::format("{} of {} hours in a row are without {}, from {} {} hour {}; expected a whole year with gaps of at most {} hours",
                      gap.size, order.size(), what, first.day, first.month, first.hour, longest_bridge)};
}

tl::expected<std::vector<double>, ReadError> WeatherGatherer::bridged(Sum Hour::*sum, std::string_view what, int last_line,
                                                                      std::vector<std::string>& notes) const {
  const std::vector<std::size_t> order = calendar();
  const std::size_t count = order.size();
  const auto mean = [&](std::size_t i) { return (hours_[order[i % count]].*sum).mean(); };
  std::size_t start = 0;  // the first hour that is given: from there no gap runs over the year's end
  while (start < count && !mean(start)) ++start;
  if (start == count) return tl::unexpected(too_long({0, count}, what, order, last_line));
  std::vector<double> values(hours_.size());
  std::vector<std::string> spans;
  std::size_t missing = 0;
  for (std::size_t i = start; i < start + count;) {
    std::size_t next = i + 1;
    while (!mean(next)) ++next;
    const std::size_t gap = next - i - 1;
    if (gap > longest_bridge) return tl::unexpected(too_long({(i + 1) % count, gap}, what, order, last_line));
    const double a = *mean(i), b = *mean(next);
    for (std::size_t k = 0; k <= gap; ++k)
      values[order[(i + k) % count]] = a + (b - a) * static_cast<double>(k) / static_cast<double>(gap + 1);
    if (gap > 0) spans.push_back(span_text(order[(i + 1) % count], order[(next - 1) % count]));
    missing += gap;
    i = next;
  }
  if (missing > 0)
    notes.push_back(fmt::format("{} missing in {} of {} hours, bridged from those beside them: {}", what, missing, count, joined(spans)));
  if (count < values.size()) std::copy_n(values.begin() + (leap_day - 24), 24, values.begin() + leap_day);
  return values;
}

std::optional<ReadError> WeatherGatherer::too_warm(const std::vector<double>& temperatures) const {
  const double mean = std::accumulate(temperatures.begin(), temperatures.end(), 0.0) / static_cast<double>(temperatures.size());
  if (mean <= warmest_middle) return std::nullopt;
  return ReadError{hours_.front().line, 1, fmt::format("the year's mean is {:.0f} °C, which no place on earth has; are they °F?", mean)};
}

tl::expected<WeatherYear, ReadError> WeatherGatherer::finish(std::optional<Metres> altitude, int last_line) const {
  WeatherYear year;
  year.years = years_;
  const auto temperatures = bridged(&Hour::temperature, "temperature", last_line, year.notes);
  if (!temperatures) return tl::unexpected(temperatures.error());
  const auto humidities = bridged(&Hour::humidity, "humidity", last_line, year.notes);
  if (!humidities) return tl::unexpected(humidities.error());
  if (auto wrong = too_warm(*temperatures)) return tl::unexpected(*std::move(wrong));
  // Humidity that never passes 1 is a fraction.
  const double highest = *std::max_element(humidities->begin(), humidities->end());
  const bool fractions = highest * 100 <= most_of_a_fraction;
  if (fractions) year.notes.emplace_back("no humidity is above 1: taken as fractions, not percent");
  for (std::size_t i = 0; i < hours_.size(); ++i) {
    const double humidity = (*humidities)[i] * (fractions ? 100 : 1);
    year.hours.push_back({Celsius((*temperatures)[i]), RelativeHumidity(std::min(humidity, 1.0))});
  }
  const auto mean = pressure_.mean();
  year.pressure = mean ? Pascals(*mean) : altitude ? pressure_at_altitude(*altitude) : standard_pressure;
  return year;
}

}  // namespace coatday::climate
