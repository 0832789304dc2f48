#include "climate/psychrometrics.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace coatday::climate {
namespace {

constexpr double vapour_share = 0.621945;  // molar mass of water over that of dry air

/// ln of the saturation pressure in Pa, and its slope per kelvin.
struct LogPressure {
  double value;
  double slope;
};

/// Eq. 5, kelvin.
LogPressure over_ice(double t) {
  constexpr double c1 = -5.6745359e3, c2 = 6.3925247, c3 = -9.677843e-3, c4 = 6.2215701e-7, c5 = 2.0747825e-9, c6 = -9.484024e-13,
                   c7 = 4.1635019;
  return {c1 / t + c2 + t * (c3 + t * (c4 + t * (c5 + t * c6))) + c7 * std::log(t),
          -c1 / (t * t) + c3 + t * (2 * c4 + t * (3 * c5 + t * 4 * c6)) + c7 / t};
}

/// Eq. 6, kelvin.
LogPressure over_water(double t) {
  constexpr double c8 = -5.8002206e3, c9 = 1.3914993, c10 = -4.8640239e-2, c11 = 4.1764768e-5, c12 = -1.4452093e-8, c13 = 6.5459673;
  return {c8 / t + c9 + t * (c10 + t * (c11 + t * c12)) + c13 * std::log(t), -c8 / (t * t) + c10 + t * (2 * c11 + t * 3 * c12) + c13 / t};
}

using Branch = LogPressure (*)(double);

/// What wets the bulb: its enthalpy at x °C is at_zero + per_kelvin x, kJ/kg.
struct Wetting {
  Branch saturation;
  double at_zero, per_kelvin;
};
constexpr Wetting wet{over_water, 0, 4.186};
constexpr Wetting icy{over_ice, -329, 2.1};  // as eq. 35 rounds it: 2501 - 2830

constexpr double dry_heat = 1.006, vapour_heat = 1.86, vapour_at_zero = 2501;  // eq. 30: kJ/(kg K), kJ/kg

double ratio_from_pressure(double vapour, double total) { return vapour_share * vapour / (total - vapour); }

/// The state whose wet bulb is sought.
struct MoistAir {
  double enthalpy;  // kJ/kg
  double ratio;     // kg/kg
  double pressure;  // Pa
};

struct Residual {
  double value;
  double slope;
};

/// Eq. 31: water that evaporates at the wet bulb x, °C, saturates the air there and brings its own enthalpy alone.
/// Zero at the wet bulb; rising and convex in x.
Residual wet_bulb_residual(const Wetting& water, const MoistAir& air, double x) {
  const LogPressure saturation = water.saturation(Celsius(x).kelvin());
  const double vapour = std::exp(saturation.value);
  const double ratio = ratio_from_pressure(vapour, air.pressure);
  const double ratio_slope = ratio * saturation.slope * air.pressure / (air.pressure - vapour);
  const double water_enthalpy = water.at_zero + water.per_kelvin * x;
  const double saturated = enthalpy(Celsius(x), HumidityRatio(ratio)).value();
  return {saturated - air.enthalpy - (ratio - air.ratio) * water_enthalpy,
          dry_heat + ratio * vapour_heat + ratio_slope * (vapour_at_zero + vapour_heat * x - water_enthalpy) -
              (ratio - air.ratio) * water.per_kelvin};
}

constexpr int most_steps = 50;  // either Newton needs about six; this bounds it for states outside the range
constexpr double small = 1e-5;  // K: after a step like that Newton's next is far below 1e-9

/// From the right of the root of a convex rising function Newton's method comes down to it without ever passing it.
double solve_wet_bulb(const Wetting& water, const MoistAir& air, double right_of_root) {
  double x = right_of_root;
  for (int i = 0; i < most_steps; ++i) {
    const Residual r = wet_bulb_residual(water, air, x);
    const double step = r.value / r.slope;
    x -= step;
    if (std::abs(step) < small) break;
  }
  return x;
}

}  // namespace

Pascals saturation_pressure(Celsius t) {
  const Branch branch = t < Celsius(0) ? over_ice : over_water;
  return Pascals(std::exp(branch(t.kelvin()).value));
}

Pascals vapour_pressure(const Air& air) { return saturation_pressure(air.temperature) * air.humidity.value(); }

std::vector<Pascals> vapour_pressures(const AirSeries& air) {
  std::vector<Pascals> all;
  all.reserve(air.rows().size());
  for (const AirRow& row : air.rows()) all.push_back(vapour_pressure(row.air));
  return all;
}

Celsius dew_point(const Air& air) {
  if (!(air.humidity.value() > 0)) throw std::domain_error("dew_point: relative humidity must be > 0");
  static const double freezing = saturation_pressure(Celsius(0)).value();
  const double vapour = vapour_pressure(air).value();
  const bool above_freezing = vapour >= freezing;
  const Branch branch = above_freezing ? over_water : over_ice;
  const double target = std::log(vapour);

  double t = air.temperature.kelvin();
  for (int i = 0; i < most_steps; ++i) {  // ln p is nearly linear in 1/T, so step in 1/T
    const LogPressure p = branch(t);
    const double next = 1 / (1 / t + (p.value - target) / (p.slope * t * t));
    const bool done = std::abs(next - t) < small;
    t = next;
    if (done) break;
  }
  const double celsius = t - Celsius(0).kelvin();  // eqs 5 and 6 do not quite meet at 0 °C: stay on this branch's side of it
  return Celsius(above_freezing ? std::max(celsius, 0.0) : std::min(celsius, 0.0));
}

Celsius wet_bulb(const Air& air, Pascals pressure) {
  const double t = air.temperature.value();
  const HumidityRatio ratio = humidity_ratio(air, pressure);
  const MoistAir state{enthalpy(air.temperature, ratio).value(), ratio.value(), pressure.value()};
  const double over_wet = t >= 0 ? solve_wet_bulb(wet, state, t) : -1;
  if (over_wet >= 0) return Celsius(over_wet);
  return Celsius(solve_wet_bulb(icy, state, std::min(t, 0.0)));
}

HumidityRatio humidity_ratio(const Air& air, Pascals pressure) {
  return HumidityRatio(ratio_from_pressure(vapour_pressure(air).value(), pressure.value()));
}

KilojoulesPerKilogram enthalpy(Celsius t, HumidityRatio ratio) {
  return KilojoulesPerKilogram(dry_heat * t.value() + ratio.value() * (vapour_at_zero + vapour_heat * t.value()));
}

RelativeHumidity relative_humidity(Celsius t, HumidityRatio ratio, Pascals pressure) {
  const double vapour = pressure.value() * ratio.value() / (vapour_share + ratio.value());
  return RelativeHumidity(vapour / saturation_pressure(t).value());
}

Pascals pressure_at_altitude(Metres z) { return standard_pressure * std::pow(1 - 2.25577e-5 * z.value(), 5.2559); }

}  // namespace coatday::climate
