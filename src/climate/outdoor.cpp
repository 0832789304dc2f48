#include "climate/outdoor.h"

#include <fmt/core.h>

#include <algorithm>
#include <utility>

#include "climate/epw.h"
#include "climate/year_csv.h"

namespace coatday::climate {

tl::expected<OutdoorYear, ReadError> OutdoorYear::parse(std::string_view text, std::string place) {
  return (is_epw(text) ? read_epw(text) : read_year_csv(text)).map([&](WeatherYear&& read) {
    OutdoorYear year;
    year.year_ = std::move(read);
    year.utc_offset_ = std::chrono::round<std::chrono::seconds>(year.year_.utc_offset);
    if (year.year_.place.empty()) year.year_.place = std::move(place);
    return year;
  });
}

const Air& OutdoorYear::hour(date::local_time<std::chrono::hours> start) const {
  const auto day = std::chrono::floor<date::days>(start);
  const year_month_day date(day);
  return year_.hours[hour_of_year(date.month(), date.day(), static_cast<int>((start - day).count()))];
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

std::optional<std::string> OutdoorYear::far_clock(const Zone& zone) const {
  constexpr Minutes neighbours{180};
  const auto offset_in = [&](date::month month) { return zone.offset(Instant(date::sys_days(date::year(2027) / month / 1))); };
  const auto ahead = utc_offset_ - std::min(offset_in(date::January), offset_in(date::July));
  if (std::chrono::abs(ahead) <= neighbours) return std::nullopt;
  return fmt::format(
      "its clock is {} {} that of the shop's time zone, so that its days and nights fall at other hours here; is it of this place?",
      format_span(std::chrono::abs(ahead)), ahead > ahead.zero() ? "ahead of" : "behind");
}

std::string OutdoorYear::describe(Units) const { return "outdoor air of " + year_.years.words() + ", " + year_.place; }

}  // namespace coatday::climate
