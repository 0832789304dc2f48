// psychrometrics.csv: the handbook's tables and worked example. psychrometrics_grid.csv: an independent library at 1e-3 K.

#include "climate/psychrometrics.h"

#include "climate/room.h"
#include "tests/published/values.h"

namespace coatday::published {
namespace {

using climate::Air;

Celsius celsius(const Value& v) { return v.has("t_F") ? Celsius((v.number("t_F") - 32) / 1.8) : Celsius(v.number("t_C")); }
Air air(const Value& v) { return {celsius(v), RelativeHumidity(v.number("rh"))}; }
Pascals pressure(const Value& v) { return Pascals(v.number("p_Pa")); }
Pascals pressure_or_standard(const Value& v) { return v.has("p_Pa") ? pressure(v) : climate::standard_pressure; }

double in_unit(Pascals p, const Value& v) {
  constexpr double psi = 6894.757293;  // 0.45359237 kg * 9.80665 m/s² / (0.0254 m)²
  return v.unit == "psi" ? p.value() / psi : p.value();
}

/// The air whose wet bulb is the row's: wet_bulb() inverted by halving.
Air air_at_wet_bulb(const Value& v) {
  double low = 0, high = 1;
  while (high - low > 1e-12) {
    const double middle = (low + high) / 2;
    const bool too_dry = climate::wet_bulb({celsius(v), RelativeHumidity(middle)}, pressure(v)).value() < v.number("wet_bulb_C");
    (too_dry ? low : high) = middle;
  }
  return {celsius(v), RelativeHumidity(high)};
}

/// Of moist air, per kilogram of the dry air in it.
double specific_volume(const Value& v) {
  const HumidityRatio water = climate::humidity_ratio(air_at_wet_bulb(v), pressure(v));
  return 1 / climate::dry_air(CubicMetres(1), celsius(v), water, pressure(v)).value();
}

/// The air that has the row's vapour pressure, at 25 °C.
Air air_of_pressure(const Value& v) {
  return {Celsius(25), RelativeHumidity(v.number("e_Pa") / climate::saturation_pressure(Celsius(25)).value())};
}

/// J/kg, of air as humid as the row says, or with its water.
double enthalpy(const Value& v) {
  const HumidityRatio water = v.has("rh") ? climate::humidity_ratio(air(v), pressure(v)) : HumidityRatio(v.number("ratio"));
  return 1000 * climate::enthalpy(celsius(v), water).value();
}

const Computations computations{
    {"enthalpy", enthalpy},
    {"saturation_pressure", [](const Value& v) { return in_unit(climate::saturation_pressure(celsius(v)), v); }},
    {"vapour_pressure", [](const Value& v) { return climate::vapour_pressure(air(v)).value(); }},
    {"dew_point", [](const Value& v) { return climate::dew_point(air(v)).value(); }},
    {"wet_bulb", [](const Value& v) { return climate::wet_bulb(air(v), pressure(v)).value(); }},
    {"humidity_ratio", [](const Value& v) { return climate::humidity_ratio(air(v), pressure_or_standard(v)).value(); }},
    {"pressure_at_altitude", [](const Value& v) { return climate::pressure_at_altitude(Metres(v.number("z_m"))).value(); }},
    {"humidity_ratio_from_vapour_pressure",
     [](const Value& v) { return climate::humidity_ratio(air_of_pressure(v), pressure(v)).value(); }},
    {"humidity_ratio_from_wet_bulb", [](const Value& v) { return climate::humidity_ratio(air_at_wet_bulb(v), pressure(v)).value(); }},
    {"dew_point_from_wet_bulb", [](const Value& v) { return climate::dew_point(air_at_wet_bulb(v)).value(); }},
    {"specific_volume_from_wet_bulb", specific_volume},
    {"relative_humidity_from_wet_bulb", [](const Value& v) { return air_at_wet_bulb(v).humidity.value(); }},
};

class Psychrometrics : public testing::TestWithParam<Group> {};
TEST_P(Psychrometrics, Agrees) { check(GetParam(), computations); }
INSTANTIATE_TEST_SUITE_P(Published, Psychrometrics, testing::ValuesIn(group({"psychrometrics.csv", "psychrometrics_grid.csv"})),
                         group_name);

}  // namespace
}  // namespace coatday::published
