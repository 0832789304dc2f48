#include "climate/customer_room.h"

#include <algorithm>
#include <string_view>

#include "climate/psychrometrics.h"

namespace coatday::climate {
namespace {

constexpr std::array<std::string_view, 12> full_month_names{"January", "February", "March",     "April",   "May",      "June",
                                                            "July",    "August",   "September", "October", "November", "December"};

bool same(const Air& a, const Air& b) { return a.temperature == b.temperature && a.humidity == b.humidity; }

std::string words(const Air& air, Units units) { return format_temperature(air.temperature, units) + ", " + format_humidity(air.humidity); }

}  // namespace

Air MonthlyAir::at(Instant t) const {
  const year_month_day date(day_of(zone_.to_local(t)));
  return months_[static_cast<unsigned>(date.month()) - 1];
}

std::string MonthlyAir::describe(Units units) const {
  std::size_t first = 0;  // of a season
  while (first < 12 && same(months_[first], months_[(first + 11) % 12])) ++first;
  if (first == 12) return words(months_[0], units) + " all year";
  std::string text;
  for (std::size_t begun = 0; begun < 12;) {
    const std::size_t from = first + begun;
    std::size_t length = 1;
    while (begun + length < 12 && same(months_[(from + length) % 12], months_[from % 12])) ++length;
    const std::string last = length == 1 ? "" : " to " + std::string(full_month_names[(from + length - 1) % 12]);
    text += (text.empty() ? "" : "; ") + words(months_[from % 12], units) + " in " + std::string(full_month_names[from % 12]) + last;
    begun += length;
  }
  return text;
}

Air HouseAir::at(Instant t) const {
  const Air outside = outdoors_.at(t);
  Celsius inside = std::max(outside.temperature, control_.heated);
  if (control_.cooled) inside = std::min(inside, *control_.cooled);
  RelativeHumidity humidity = relative_humidity(inside, humidity_ratio(outside, outdoors_.pressure()), outdoors_.pressure());
  if (control_.least) humidity = std::max(humidity, *control_.least);
  return {inside, std::min(humidity, control_.most.value_or(RelativeHumidity(1)))};
}

std::string HouseAir::describe(Units units) const {
  std::string text = "heated to " + format_temperature(control_.heated, units);
  if (control_.cooled) text += ", cooled to " + format_temperature(*control_.cooled, units);
  if (control_.least) text += ", no drier than " + format_humidity(*control_.least);
  if (control_.most) text += ", no damper than " + format_humidity(*control_.most);
  return text + "; " + outdoors_.describe(units);
}

}  // namespace coatday::climate
