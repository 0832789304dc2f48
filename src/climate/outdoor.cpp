#include "climate/outdoor.h"

#include <utility>

#include "climate/year_csv.h"

namespace coatday::climate {

tl::expected<OutdoorYear, CsvError> OutdoorYear::parse(std::string_view text, std::string place) {
  return read_year(text).map([&](YearCsv&& csv) {
    OutdoorYear year;
    year.hours_ = std::move(csv.hours);
    year.utc_offset_ = std::chrono::round<std::chrono::seconds>(csv.utc_offset);
    if (csv.mean_pressure) year.pressure_ = *csv.mean_pressure;
    year.place_ = std::move(place);
    return year;
  });
}

const Air& OutdoorYear::hour(date::local_time<std::chrono::hours> start) const {
  const auto day = std::chrono::floor<date::days>(start);
  const year_month_day date(day);
  const bool leap_day = date.month() == date::February && date.day() == date::day(29);
  const int hour_of_day = static_cast<int>((start - day).count());
  return hours_[hour_of_year(date.month(), leap_day ? date::day(28) : date.day(), hour_of_day)];
}

Air OutdoorYear::at(Instant t) const {
  using std::chrono::hours;
  constexpr Minutes half_hour{30};
  const LocalTime since_middle{t.time_since_epoch() + utc_offset_ - half_hour};
  const auto start = std::chrono::floor<hours>(since_middle);
  const double share = Hours(since_middle - start).count();
  const Air &before = hour(start), &after = hour(start + hours(1));
  return {before.temperature + (after.temperature - before.temperature) * share,
          before.humidity + (after.humidity - before.humidity) * share};
}

std::string OutdoorYear::describe(Units) const { return "outdoor air of a typical year, " + place_; }

}  // namespace coatday::climate
