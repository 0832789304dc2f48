#include "quantity/format.h"

#include <fmt/core.h>

#include <cmath>
#include <cstdlib>

namespace coatday {
namespace {

// Digits are dropped where the eye would not use them.
constexpr double metre_per_inch = 0.0254;
constexpr double square_metre_per_square_foot = 0.09290304;
constexpr double litre_per_gallon = 3.785411784;
constexpr double micrometre_per_mil = 25.4;
constexpr double cubic_metre_per_hour_per_cfm = 1.69901079552;

// Rounded, without trailing zeros and without the sign of a zero.
std::string number(double value, int decimals) {
  std::string out = fmt::format("{:.{}f}", value, decimals);
  if (decimals > 0) {
    out.erase(out.find_last_not_of('0') + 1);
    if (out.ends_with('.')) out.pop_back();
  }
  return out == "-0" ? "0" : out;
}

// One decimal from 1 to 10, two below, none above.
std::string short_number(double value) {
  const double size = std::abs(value);
  if (size < 1) return number(value, 2);
  return number(value, size < 10 ? 1 : 0);
}

std::string sixteenths(double inches) {
  const long total = std::lround(std::abs(inches) * 16);
  const std::string sign = inches < 0 && total != 0 ? "-" : "";
  const long whole = total / 16;
  long above = total % 16;
  long below = 16;
  while (above != 0 && above % 2 == 0) {
    above /= 2;
    below /= 2;
  }
  if (above == 0) return fmt::format("{}{} in", sign, whole);
  if (whole == 0) return fmt::format("{}{}/{} in", sign, above, below);
  return fmt::format("{}{} {}/{} in", sign, whole, above, below);
}

// Below a quarter inch a sixteenth is too coarse, unless it is meant.
std::string inches(double value) {
  const double in_sixteenths = std::abs(value) * 16;
  const bool meant = in_sixteenths > 0.5 && std::abs(in_sixteenths - std::round(in_sixteenths)) < 0.02;
  if (std::abs(value) >= 0.25 || meant) return sixteenths(value);
  return number(value, std::abs(value) < 0.1 ? 3 : 2) + " in";
}

std::string count(long n, const char* one, const char* many) { return fmt::format("{} {}", n, n == 1 ? one : many); }

std::string two_units(std::string large, long small, const char* unit) {
  return small == 0 ? large : fmt::format("{} {} {}", large, small, unit);
}

constexpr double airflow_slack = 1e-6;  // what is a whole number but for rounding stays it

double in_units(CubicMetresPerHour airflow, Units units) {
  return units == Units::us ? airflow.value() / cubic_metre_per_hour_per_cfm : airflow.value();
}

std::string whole_airflow(double amount, Units units) { return number(amount, 0) + (units == Units::us ? " cfm" : " m³/h"); }

}  // namespace

std::string format_length(Metres length, Units units) {
  if (units == Units::us) return inches(length.value() / metre_per_inch);
  return short_number(length.value() * 1000) + " mm";
}

std::string format_area(SquareMetres area, Units units) {
  const double size = std::abs(area.value());
  if (units == Units::us) {
    const double feet = area.value() / square_metre_per_square_foot;
    if (std::abs(feet) < 0.5 && feet != 0) return short_number(feet * 144) + " in²";
    return number(feet, std::abs(feet) < 100 ? 1 : 0) + " ft²";
  }
  if (size < 0.01 && size > 0) return short_number(area.value() * 1e4) + " cm²";
  if (size < 10) return number(area.value(), 2) + " m²";
  return number(area.value(), size < 100 ? 1 : 0) + " m²";
}

std::string format_volume(Litres volume, Units units) {
  if (units == Units::us) {
    const double gallons = volume.value() / litre_per_gallon;
    if (std::abs(gallons) >= 1) return number(gallons, std::abs(gallons) < 100 ? 1 : 0) + " gal";
    if (std::abs(gallons) >= 0.25) return number(gallons * 4, 1) + " qt";
    return short_number(gallons * 128) + " fl oz";
  }
  const double size = std::abs(volume.value());
  if (size < 0.9995) return short_number(volume.value() * 1000) + " ml";
  return number(volume.value(), size < 100 ? 1 : 0) + " l";
}

std::string format_airflow(CubicMetresPerHour airflow, Units units) {
  return whole_airflow(std::ceil(in_units(airflow, units) - airflow_slack), units);
}

std::string format_exhaust(CubicMetresPerHour airflow, Units units) {
  const double amount = in_units(airflow, units);
  return whole_airflow(std::floor(amount + airflow_slack), units);
}

std::string format_spreading_rate(SquareMetresPerLitre rate, Units units) {
  if (units == Units::us) return short_number(rate.value() / square_metre_per_square_foot * litre_per_gallon) + " ft²/gal";
  return number(rate.value(), std::abs(rate.value()) < 100 ? 1 : 0) + " m²/l";
}

std::string format_temperature(Celsius temperature, Units units) {
  if (units == Units::us) return number(temperature.value() * 1.8 + 32, 0) + " °F";
  return number(temperature.value(), 0) + " °C";
}

std::string format_humidity(RelativeHumidity humidity) { return number(humidity.value() * 100, 0) + " % RH"; }

std::string format_film(Micrometres film, Units units) {
  if (units == Units::us) return short_number(film.value() / micrometre_per_mil) + " mil";
  return short_number(film.value()) + " µm";
}

std::string format_span(Hours span) {
  const std::string sign = span.count() < 0 ? "-" : "";
  const double hours = std::abs(span.count());
  const long seconds = std::lround(hours * 3600);
  const long minutes = std::lround(hours * 60);
  if (seconds == 0) return "0 min";
  if (seconds < 60) return fmt::format("{}{} s", sign, seconds);
  if (minutes < 60) return fmt::format("{}{} min", sign, minutes);
  if (minutes < 24L * 60) return sign + two_units(fmt::format("{} h", minutes / 60), minutes % 60, "min");
  const long whole_hours = std::lround(hours);
  return sign + two_units(count(whole_hours / 24, "day", "days"), whole_hours % 24, "h");
}

std::string format_hours_minutes(Minutes span) {
  const auto size = std::abs(span.count());
  return fmt::format("{}{}:{:02}", span.count() < 0 ? "-" : "", size / 60, size % 60);
}

}  // namespace coatday
