#pragma once
// A number with its unit in its type: what makes no sense does not compile.

#include <compare>

namespace coatday {

/// A value in the one unit that its tag names. Same size and cost as a double.
template <class Tag>
class Quantity {
 public:
  constexpr Quantity() = default;
  constexpr explicit Quantity(double value) : value_(value) {}
  [[nodiscard]] constexpr double value() const { return value_; }

  constexpr auto operator<=>(const Quantity&) const = default;
  constexpr Quantity& operator+=(Quantity other) {
    value_ += other.value_;
    return *this;
  }
  constexpr Quantity& operator-=(Quantity other) {
    value_ -= other.value_;
    return *this;
  }
  friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.value_ + b.value_); }
  friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.value_ - b.value_); }
  friend constexpr Quantity operator*(Quantity a, double k) { return Quantity(a.value_ * k); }
  friend constexpr Quantity operator*(double k, Quantity a) { return Quantity(a.value_ * k); }
  friend constexpr Quantity operator/(Quantity a, double k) { return Quantity(a.value_ / k); }
  friend constexpr double operator/(Quantity a, Quantity b) { return a.value_ / b.value_; }

 private:
  double value_ = 0;
};

using Metres = Quantity<struct MetresTag>;
using SquareMetres = Quantity<struct SquareMetresTag>;
using Litres = Quantity<struct LitresTag>;
using CubicMetres = Quantity<struct CubicMetresTag>;
using CubicMetresPerHour = Quantity<struct CubicMetresPerHourTag>;
using CubicMetresPerLitre = Quantity<struct CubicMetresPerLitreTag>;  ///< of vapour or air, per litre of liquid
using Grams = Quantity<struct GramsTag>;
using SquareMetresPerLitre = Quantity<struct SquareMetresPerLitreTag>;
using SquareMetresPerHour = Quantity<struct SquareMetresPerHourTag>;
using Micrometres = Quantity<struct MicrometresTag>;
using GramsPerLitre = Quantity<struct GramsPerLitreTag>;
using Pascals = Quantity<struct PascalsTag>;
using RelativeHumidity = Quantity<struct RelativeHumidityTag>;  ///< a fraction, 0 to 1
using HumidityRatio = Quantity<struct HumidityRatioTag>;        ///< kg of water per kg of dry air
using MoistureContent = Quantity<struct MoistureContentTag>;    ///< a fraction of the oven-dry mass
using Kelvins = Quantity<struct KelvinsTag>;                    ///< a difference of temperature
using KilojoulesPerMole = Quantity<struct KilojoulesPerMoleTag>;
using KilojoulesPerKilogram = Quantity<struct KilojoulesPerKilogramTag>;
using Kilograms = Quantity<struct KilogramsTag>;
using KilogramsPerHour = Quantity<struct KilogramsPerHourTag>;
using Kilowatts = Quantity<struct KilowattsTag>;
using Money = Quantity<struct MoneyTag>;  ///< in the shop's own currency

constexpr SquareMetres operator*(Metres a, Metres b) { return SquareMetres(a.value() * b.value()); }
constexpr Litres operator/(SquareMetres a, SquareMetresPerLitre rate) { return Litres(a.value() / rate.value()); }
constexpr Litres operator/(Grams mass, GramsPerLitre density) { return Litres(mass.value() / density.value()); }
constexpr Grams operator*(Litres volume, GramsPerLitre density) { return Grams(volume.value() * density.value()); }
constexpr CubicMetres operator*(Litres volume, CubicMetresPerLitre each) { return CubicMetres(volume.value() * each.value()); }

/// A temperature, a point on its scale: two of them have a difference, but no sum.
class Celsius {
 public:
  constexpr Celsius() = default;
  constexpr explicit Celsius(double value) : value_(value) {}
  [[nodiscard]] constexpr double value() const { return value_; }
  [[nodiscard]] constexpr double kelvin() const { return value_ + 273.15; }

  constexpr auto operator<=>(const Celsius&) const = default;
  friend constexpr Kelvins operator-(Celsius a, Celsius b) { return Kelvins(a.value_ - b.value_); }
  friend constexpr Celsius operator+(Celsius a, Kelvins b) { return Celsius(a.value_ + b.value()); }
  friend constexpr Celsius operator-(Celsius a, Kelvins b) { return Celsius(a.value_ - b.value()); }

 private:
  double value_ = 0;
};

}  // namespace coatday
