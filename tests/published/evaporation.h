#pragma once
// How fast a liquid evaporates that cools itself, from handbook properties alone: what the laws of solvents are held against.

#include <string_view>

namespace coatday::published {

/// A liquid of the table in evaporation.cpp.
class Liquid {
 public:
  /// Throws std::runtime_error for a name that the table does not have.
  explicit Liquid(std::string_view name);

  /// Pa. Perry's Chemical Engineers' Handbook, 8th ed., Table 2-8.
  [[nodiscard]] double vapour_pressure(double celsius) const;
  /// °C, of a surface in air that holds the share `humidity` of the liquid's own saturation, where all of its heat comes from that air.
  /// Heat and mass are carried alike, by Lewis's number to the power 2/3 (Chilton and Colburn).
  [[nodiscard]] double wet_bulb(double celsius, double humidity = 0) const;
  /// Litres per hour and area, up to a factor that all liquids share. The surface is cooled by `share` of the way to its wet bulb.
  [[nodiscard]] double rate(double celsius, double share, double humidity = 0) const;
  /// kJ/mol of that rate about 23 °C.
  [[nodiscard]] double activation(double share) const;

 private:
  [[nodiscard]] double diffusivity(double celsius) const;
  [[nodiscard]] double heat_of_evaporation(double celsius) const;

  const struct Properties* of_;
};

}  // namespace coatday::published
