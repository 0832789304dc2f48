#include "input/amounts.h"

#include <fmt/core.h>

#include <algorithm>

#include "finish/rate_factors.h"
#include "input/defaults.h"
#include "input/mistakes.h"

namespace coatday::input {
namespace {

constexpr int most = 10'000;  // of anything that is counted

// The parsed value if it passes.
template <class T, class Test>
Parsed<T> only_if(Parsed<T> parsed, std::string_view typed, Test passes, std::string_view expected) {
  if (!parsed || passes(*parsed)) return parsed;
  return tl::make_unexpected(fmt::format("{} is out of range; expected {}", in_quotes(typed), expected));
}

}  // namespace

tl::unexpected<std::string> wrong_value(std::string_view typed, std::string_view expected) {
  return tl::make_unexpected(fmt::format("expected {}, found {}", expected, in_quotes(typed)));
}

std::string_view trim(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t\n");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t\n") - first + 1);
}

std::vector<std::string_view> split(std::string_view text, std::string_view mark) {
  std::vector<std::string_view> parts;
  for (std::size_t at = text.find(mark); at != std::string_view::npos; at = text.find(mark)) {
    parts.push_back(trim(text.substr(0, at)));
    text.remove_prefix(at + mark.size());
  }
  parts.push_back(trim(text));
  return parts;
}

Parsed<std::string> parse_name(std::string_view typed) {
  const std::string_view text = trim(typed);
  if (!text.empty() && text.size() <= 200 && text.find('\n') == std::string_view::npos) return std::string(text);
  return wrong_value(typed, "one line of text, up to 200 bytes");
}

Parsed<std::string> parse_note(std::string_view typed) {
  std::string text(trim(typed));
  std::ranges::replace(text, '\n', ' ');
  return text;
}

Parsed<int> parse_positive_count(std::string_view typed) {
  return only_if(
      parse_count(typed), typed, [](int n) { return n >= 1 && n <= most; }, "a count from 1 to 10000");
}

Parsed<int> parse_set_aside(std::string_view typed) {
  return only_if(
      parse_count(typed), typed, [](int n) { return n <= most; }, "a count from 0 to 10000");
}

Parsed<int> parse_coats(std::string_view typed) {
  return only_if(
      parse_count(typed), typed, [](int n) { return n <= 100; }, "a count from 0 to 100");
}

Parsed<double> parse_factor(std::string_view typed) {
  return only_if(
      parse_number(typed), typed, [](double x) { return x >= 1 && x <= 100; }, "a factor from 1 to 100");
}

Parsed<double> parse_air_movement(std::string_view typed) {
  return only_if(
      parse_number(typed), typed, [](double x) { return x >= finish::least_movement && x <= finish::most_movement; },
      "how many times as fast films dry by evaporation as where air moves as usual, 0.5 to 2");
}

Parsed<double> parse_importance(std::string_view typed) {
  return only_if(
      parse_number(typed), typed, [](double x) { return x > 0 && x <= 1000; },
      "how many days a day late counts as, above 0 and up to 1000");
}

Parsed<double> parse_parts(std::string_view typed) {
  return only_if(
      parse_number(typed), typed, [](double x) { return x > 0 && x <= 1000; }, "parts by volume, above 0 and up to 1000");
}

Parsed<double> parse_some_share(std::string_view typed) {
  return only_if(
      parse_share(typed), typed, [](double x) { return x > 0; }, "a share above 0 %");
}

Parsed<double> parse_explosive_limit(std::string_view typed) {
  return only_if(
      parse_share(typed), typed, [](double x) { return x > 0 && x <= 0.5; },
      "a lower explosive limit, above 0 % and up to 50 % of the air by volume");
}

Parsed<double> parse_vapour_limit(std::string_view typed) {
  return only_if(
      parse_share(typed), typed, [](double x) { return x > 0 && x <= 0.25; },
      "a share of the lower explosive limit above 0 % and up to 25 % (29 CFR 1910.94(c)(6)(ii)), such as 20 % (8 CCR 5153(d))");
}

Parsed<RelativeHumidity> parse_humidity(std::string_view typed) {
  return parse_some_share(typed).map([](double share) { return RelativeHumidity(share); });
}

Parsed<Celsius> parse_air_temperature(std::string_view typed) {
  return only_if(
      parse_temperature(typed), typed, [](Celsius t) { return t >= Celsius(-40) && t <= Celsius(60); },
      "the air of a room, -40 °C to 60 °C");
}

Parsed<Kelvins> parse_margin(std::string_view typed) {
  return only_if(
      parse_temperature_difference(typed), typed, [](Kelvins k) { return k >= Kelvins(0); }, "a difference of 0 K or more");
}

Parsed<climate::Air> parse_air(std::string_view typed) {
  const std::size_t unit = typed.find_first_of("CF");
  if (unit == std::string_view::npos || unit + 1 == trim(typed).size())
    return wrong_value(typed, "a temperature and a humidity, such as 23 °C 50 %");
  const auto temperature = parse_air_temperature(typed.substr(0, unit + 1));
  if (!temperature) return tl::make_unexpected(temperature.error());
  const auto humidity = parse_humidity(trim(typed.substr(unit + 1)));
  if (!humidity) return tl::make_unexpected(humidity.error());
  return climate::Air{*temperature, *humidity};
}

Parsed<KilojoulesPerMole> parse_activation(std::string_view typed) {
  constexpr std::string_view unit = "kJ/mol";
  const std::string_view text = trim(typed);
  const auto number = text.ends_with(unit) ? parse_number(trim(text.substr(0, text.size() - unit.size()))) : parse_number("");
  if (number && *number >= 0 && *number <= 500) return KilojoulesPerMole(*number);
  return wrong_value(typed, "an activation energy from 0 to 500 kJ/mol, such as 50 kJ/mol");
}

Parsed<Money> parse_price(std::string_view typed) {
  return only_if(
             parse_number(typed), typed, [](double x) { return x >= 0 && x <= 1e6; }, "a price of 0 or more")
      .map([](double x) { return Money(x); });
}

Parsed<Hours> parse_some_time(std::string_view typed) {
  return only_if(
      parse_duration(typed), typed, [](Hours h) { return h > Hours(0); }, "a duration above 0");
}

Parsed<Hours> parse_fire_watch(std::string_view typed) {
  return only_if(
      parse_duration(typed), typed, [](Hours h) { return h >= defaults::hot_work_clear; }, "30 min or more");
}

Parsed<Minutes> parse_minutes(std::string_view typed) { return parse_duration(typed).map(ceil_minutes); }

// A length is above 0; here alone 0 is one too. What follows the 0 must be a unit, as it would be after a 1.
Parsed<Metres> parse_distance(std::string_view typed) {
  const std::string_view text = trim(typed);
  const bool nothing = text.starts_with("0") && text.find_first_of("123456789") == std::string_view::npos;
  if (nothing && parse_length("1" + std::string(text.substr(1)))) return Metres(0);
  return parse_length(typed);
}

Parsed<SquareMetres> parse_rectangle(std::string_view typed) {
  std::string text(typed);
  if (const std::size_t times = text.find("×"); times != std::string::npos) text.replace(times, std::string_view("×").size(), " x ");
  const std::vector<std::string_view> sides = split(text, " x ");
  if (sides.size() != 2) return wrong_value(typed, "two lengths, such as 1/2 in x 8 in");
  const auto length = parse_length(sides[0]);
  const auto width = parse_length(sides[1]);
  if (!length) return tl::make_unexpected(length.error());
  if (!width) return tl::make_unexpected(width.error());
  return *length * *width;
}

}  // namespace coatday::input
