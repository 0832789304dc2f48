#include "wood/cup.h"

#include <cmath>

namespace coatday::wood {

// Cells at equal distances from the middle are taken together, so that equal sides leave nothing.
Curvature free_curvature(std::span<const double> strain, Metres thickness) {
  const std::size_t n = strain.size();
  double moment = 0;  // of strain, in cells squared
  for (std::size_t i = 0; i < n / 2; ++i) {
    moment += (strain[n - 1 - i] - strain[i]) * (static_cast<double>(n - 1) / 2 - static_cast<double>(i));
  }
  return Curvature(12 * moment / (static_cast<double>(n) * static_cast<double>(n)) / thickness.value());
}

Curvature free_curvature(std::span<const double> moisture, double coefficient, Metres thickness) {
  return free_curvature(moisture, thickness) * (100 * coefficient);
}

Metres sag(Curvature curvature, Metres width) { return Metres(curvature.value() * width.value() * width.value() / 8); }

HeldTop held(Curvature free, Metres width, Metres thickness, Gigapascals modulus_across) {
  const double stiffness = 1e9 * modulus_across.value() * std::pow(thickness.value(), 3) / 12;  // N m² for each metre of length
  return {sag(free, width) * (2.0 / 27), NewtonsPerMetre(1.5 * stiffness * free.value() / (width.value() / 2))};
}

}  // namespace coatday::wood
