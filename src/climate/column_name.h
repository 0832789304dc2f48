#pragma once
// What a column of a table holds, from its name: "t_C", "Temp (°F)", "Relative humidity, %", "Date/Time".

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/quantity.h"

namespace coatday::climate {

enum class Scale { celsius, fahrenheit };
[[nodiscard]] Celsius celsius(double value, Scale);

/// Humidities of which none is above this are fractions, not percent: sensors read a little above saturation, and no air is so dry for long.
inline constexpr double most_of_a_fraction = 1.05;
/// Temperatures whose middle is above this, in °C, are in °F: no shop is so warm, nor is the mean of a year anywhere (the highest known is
/// about 35 °C, from memory).
inline constexpr double warmest_middle = 40;

class ColumnName {
 public:
  explicit ColumnName(std::string_view name);

  /// Whether one of its words is among these.
  [[nodiscard]] bool has(std::initializer_list<std::string_view> words) const;
  [[nodiscard]] bool is_temperature() const;  ///< of the air; not a dew point or a wet bulb
  [[nodiscard]] bool is_humidity() const;     ///< relative
  [[nodiscard]] bool is_pressure() const;
  [[nodiscard]] bool is_date() const;
  [[nodiscard]] bool is_clock() const;
  [[nodiscard]] std::optional<Scale> scale() const;  ///< none where the name does not say °C or °F
  [[nodiscard]] bool in_percent() const;

 private:
  std::vector<std::string> words_;  // of ASCII letters or digits, in lower case
  bool percent_sign_ = false;
};

/// The separator of a table, from the line that names its columns: that one of comma, semicolon and tab that parts it into most fields.
[[nodiscard]] char separator_of(std::string_view header_line);

}  // namespace coatday::climate
