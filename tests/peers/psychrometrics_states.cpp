// Moist air at random states, as CSV on stdout, for a comparison with another library: psychrometrics.cjs.

#include <fmt/core.h>

#include <random>

#include "climate/psychrometrics.h"

int main() {
  using namespace coatday;
  constexpr int states = 10'000;
  std::mt19937 random(1);  // its sequence is fixed by the language's standard
  const auto between = [&random](double low, double high) { return low + (high - low) * (static_cast<double>(random()) / 4294967296.0); };
  fmt::print("t_c,rh,p_pa,saturation_pa,vapour_pa,dew_point_c,wet_bulb_c,humidity_ratio,enthalpy_kj\n");
  for (int i = 0; i < states; ++i) {
    const climate::Air air{Celsius(between(-30, 50)), RelativeHumidity(between(0.02, 1))};
    const Pascals pressure(between(80'000, 104'000));
    const HumidityRatio ratio = climate::humidity_ratio(air, pressure);
    fmt::print("{:.17g},{:.17g},{:.17g},{:.17g},{:.17g},{:.17g},{:.17g},{:.17g},{:.17g}\n", air.temperature.value(), air.humidity.value(),
               pressure.value(), climate::saturation_pressure(air.temperature).value(), climate::vapour_pressure(air).value(),
               climate::dew_point(air).value(), climate::wet_bulb(air, pressure).value(), ratio.value(),
               climate::enthalpy(air.temperature, ratio).value());
  }
}
