#include "quantity/time_format.h"

#include <fmt/core.h>

#include <array>
#include <cmath>

namespace coatday {
namespace {

constexpr std::array<const char*, 7> weekday_names{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
constexpr std::array<const char*, 12> month_names{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

std::string iso_date(LocalDay day) {
  const year_month_day ymd(day);
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(ymd.year()), static_cast<unsigned>(ymd.month()),
                     static_cast<unsigned>(ymd.day()));
}

}  // namespace

std::string iso8601(Instant instant, const Zone& zone) {
  const LocalTime local = zone.to_local(instant);
  const date::hh_mm_ss clock(local - day_of(local));
  const auto offset = std::chrono::duration_cast<Minutes>(zone.offset(instant)).count();
  const auto size = std::abs(offset);
  return fmt::format("{}T{}:{:02}{}{:02}:{:02}", iso_date(day_of(local)), clock_time(local), clock.seconds().count(),
                     offset < 0 ? '-' : '+', size / 60, size % 60);
}

std::string clock_time(LocalTime local) {
  const date::hh_mm_ss clock(local - day_of(local));
  return fmt::format("{:02}:{:02}", clock.hours().count(), clock.minutes().count());
}

std::string short_date(LocalDay day) {
  const year_month_day ymd(day);
  return fmt::format("{} {} {}", weekday_names[weekday(day).c_encoding()], static_cast<unsigned>(ymd.day()),
                     month_names[static_cast<unsigned>(ymd.month()) - 1]);
}

std::string long_date(LocalDay day) { return fmt::format("{} {}", short_date(day), static_cast<int>(year_month_day(day).year())); }

std::string day_and_time(LocalTime local) { return fmt::format("{} {}", short_date(day_of(local)), clock_time(local)); }

}  // namespace coatday
