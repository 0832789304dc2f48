#include "wood/diffusion.h"

#include <cmath>

#include "climate/psychrometrics.h"

namespace coatday::wood {
namespace {

constexpr Celsius reference{20};
constexpr double low = 1e-10 / 3, high = 2e-10;  // m²/s
constexpr double activation = 40e3;              // J/mol
constexpr double gas_constant = 8.31446261815324;

}  // namespace

DiffusionBand diffusion_across(Celsius t) {
  const double warmer = std::exp(activation / gas_constant * (1 / reference.kelvin() - 1 / t.kelvin()));
  return {Diffusivity(low * warmer), Diffusivity(std::sqrt(low * high) * warmer), Diffusivity(high * warmer)};
}

double film_factor(Celsius t) { return climate::saturation_pressure(film_test_temperature) / climate::saturation_pressure(t); }

}  // namespace coatday::wood
