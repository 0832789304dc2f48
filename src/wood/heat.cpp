#include "wood/heat.h"

namespace coatday::wood {

double specific_heat(Celsius temperature, MoistureContent moisture) {
  const double t = temperature.kelvin(), percent = 100 * moisture.value();
  const double dry = 0.1031 + 0.003867 * t;  // kJ/(kg K)
  const double bond = percent * (-0.06191 + 2.36e-4 * t - 1.33e-4 * percent);
  constexpr double water = 4.18;
  return 1000 * ((dry + water * moisture.value()) / (1 + moisture.value()) + bond);
}

}  // namespace coatday::wood
