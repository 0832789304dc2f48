#include "climate/column_name.h"

#include <algorithm>

namespace coatday::climate {

Celsius celsius(double value, Scale scale) { return Celsius(scale == Scale::celsius ? value : (value - 32) * 5 / 9); }

ColumnName::ColumnName(std::string_view name) : percent_sign_(name.find('%') != std::string_view::npos) {
  bool in_word = false;
  for (char c : name) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    const bool part = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    if (part && !in_word) words_.emplace_back();
    if (part) words_.back() += c;
    in_word = part;
  }
}

bool ColumnName::has(std::initializer_list<std::string_view> words) const {
  return std::any_of(words_.begin(), words_.end(),
                     [&](const std::string& own) { return std::find(words.begin(), words.end(), own) != words.end(); });
}

bool ColumnName::is_temperature() const {
  return has({"t", "temp", "temperature", "tempc", "tempf"}) && !has({"dew", "dewpoint", "wet", "bulb", "frost"});
}
bool ColumnName::is_humidity() const { return has({"rh", "humidity", "hum"}) && !has({"absolute", "specific", "ratio"}); }
bool ColumnName::is_pressure() const { return has({"p", "pressure"}) && !has({"vapour", "vapor"}); }
bool ColumnName::is_date() const { return has({"date", "datetime", "timestamp"}); }
bool ColumnName::is_clock() const { return has({"time", "datetime", "timestamp"}); }

std::optional<Scale> ColumnName::scale() const {
  const bool c = has({"c", "degc", "celsius", "tempc"}), f = has({"f", "degf", "fahrenheit", "tempf"});
  if (c == f) return std::nullopt;
  return c ? Scale::celsius : Scale::fahrenheit;
}

bool ColumnName::in_percent() const { return percent_sign_ || has({"pct", "percent"}); }

char separator_of(std::string_view line) {
  char best = ',';
  for (const char c : {';', '\t'})
    if (std::count(line.begin(), line.end(), c) > std::count(line.begin(), line.end(), best)) best = c;
  return best;
}

}  // namespace coatday::climate
