#include "tests/published/evaporation.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>
#include <string>

namespace coatday::published {

// Vapour pressure, Pa: exp(c1 + c2 / T + c3 ln T + c4 T^c5), T in K. Liquid, mol/L: d1 / d2^(1 + (1 - T / d3)^d4). Perry's Chemical
// Engineers' Handbook, 8th ed., Table 2-8 and its table of liquid densities (DIPPR equations 101 and 105), seen as a public library of
// chemical properties has them. Diffusion volumes: Fuller, Ensley and Giddings (1969) as in Poling, Prausnitz and O'Connell, 5th ed.,
// Table 11-1, seen as quoted in an open program: C 15.9, H 2.31, O 6.11, ring -18.3, water 13.1, air 19.7.
struct Properties {
  std::string_view name;
  double c1, c2, c3, c4, c5;
  double litres;  // per mole, at 25 °C
  double grams;   // per mole
  double volume;  // of diffusion
};

namespace {

constexpr double liquid_at_25(double d1, double d2, double d3, double d4) { return std::pow(d2, 1 + std::pow(1 - 298.15 / d3, d4)) / d1; }

constexpr double grams(int c, int h, int o) { return 12.011 * c + 1.008 * h + 15.999 * o; }
constexpr double diffusion_volume(int c, int h, int o, int rings) { return 15.9 * c + 2.31 * h + 6.11 * o - 18.3 * rings; }

const std::array liquids{
    Properties{"water", 73.649, -7258.2, -7.3037, 4.1653e-6, 2, 0.01807, grams(0, 2, 1), 13.1},  // its volume from memory
    Properties{"ethanol", 73.304, -7122.3, -7.1424, 2.8853e-6, 2, liquid_at_25(1.6288, 0.27469, 514, 0.23178), grams(2, 6, 1),
               diffusion_volume(2, 6, 1, 0)},
    Properties{"acetone", 69.006, -5599.6, -7.0985, 6.2237e-6, 2, liquid_at_25(1.2332, 0.25886, 508.2, 0.2913), grams(3, 6, 1),
               diffusion_volume(3, 6, 1, 0)},
    Properties{"methyl-ethyl-ketone", 72.698, -6143.6, -7.5779, 5.6476e-6, 2, liquid_at_25(0.93767, 0.25035, 535.5, 0.29964),
               grams(4, 8, 1), diffusion_volume(4, 8, 1, 0)},
    Properties{"toluene", 76.945, -6729.8, -8.179, 5.3017e-6, 2, liquid_at_25(0.8792, 0.27136, 591.75, 0.29241), grams(7, 8, 0),
               diffusion_volume(7, 8, 0, 1)},
    Properties{"n-butyl-acetate", 122.82, -9253.2, -14.99, 1.047e-5, 2, liquid_at_25(0.67794, 0.2637, 575.4, 0.29318), grams(6, 12, 2),
               diffusion_volume(6, 12, 2, 0)},
    Properties{"o-xylene", 90.405, -7955.2, -10.086, 5.9594e-6, 2, liquid_at_25(0.69962, 0.26143, 630.3, 0.27365), grams(8, 10, 0),
               diffusion_volume(8, 10, 0, 1)},
    Properties{"m-xylene", 85.099, -7615.9, -9.3072, 5.5643e-6, 2, liquid_at_25(0.68902, 0.26086, 617, 0.27479), grams(8, 10, 0),
               diffusion_volume(8, 10, 0, 1)},
    Properties{"octane", 96.084, -7900.2, -11.003, 7.1802e-6, 2, liquid_at_25(0.5266, 0.25693, 568.7, 0.28571), grams(8, 18, 0),
               diffusion_volume(8, 18, 0, 0)},
    Properties{"nonane", 109.35, -9030.4, -12.882, 7.8544e-6, 2, liquid_at_25(0.46321, 0.25444, 594.6, 0.28571), grams(9, 20, 0),
               diffusion_volume(9, 20, 0, 0)},
    Properties{"decane", 112.73, -9749.6, -13.245, 7.1266e-6, 2, liquid_at_25(0.41084, 0.25175, 617.7, 0.28571), grams(10, 22, 0),
               diffusion_volume(10, 22, 0, 0)},
    Properties{"undecane", 131, -11143, -15.855, 8.1871e-6, 2, liquid_at_25(0.36703, 0.24876, 639, 0.28571), grams(11, 24, 0),
               diffusion_volume(11, 24, 0, 0)},
};

constexpr double gas_constant = 8.31446261815324;  // J/(mol K)
constexpr double zero_celsius = 273.15;
constexpr double air_grams = 28.96, air_volume = 19.7;
constexpr double heat_diffusivity = 2.2e-5, heat_capacity = 1.18 * 1006;  // of air at 25 °C, m²/s and J/(m³ K), from memory

}  // namespace

Liquid::Liquid(std::string_view name) {
  const auto found = std::find_if(liquids.begin(), liquids.end(), [&](const Properties& p) { return p.name == name; });
  if (found == liquids.end()) throw std::runtime_error("no properties of " + std::string(name));
  of_ = &*found;
}

double Liquid::vapour_pressure(double celsius) const {
  const double t = celsius + zero_celsius;
  return std::exp(of_->c1 + of_->c2 / t + of_->c3 * std::log(t) + of_->c4 * std::pow(t, of_->c5));
}

/// Fuller's correlation at 101325 Pa, m²/s.
double Liquid::diffusivity(double celsius) const {
  const double masses = 2 / (1 / of_->grams + 1 / air_grams);
  const double radii = std::cbrt(of_->volume) + std::cbrt(air_volume);
  return 1e-4 * 0.00143 * std::pow(celsius + zero_celsius, 1.75) / (1.01325 * std::sqrt(masses) * radii * radii);
}

/// Clausius and Clapeyron, J/mol.
double Liquid::heat_of_evaporation(double celsius) const {
  constexpr double step = 0.01;
  const double slope = std::log(vapour_pressure(celsius + step) / vapour_pressure(celsius - step)) / (2 * step);
  return gas_constant * std::pow(celsius + zero_celsius, 2) * slope;
}

double Liquid::wet_bulb(double celsius, double humidity) const {
  double low = -80, high = celsius;
  while (high - low > 1e-9) {
    const double t = (low + high) / 2;
    const double moles = (vapour_pressure(t) - humidity * vapour_pressure(celsius)) / (gas_constant * (t + zero_celsius));
    const double cooling = std::pow(diffusivity(t) / heat_diffusivity, 2.0 / 3) * moles * heat_of_evaporation(t) / heat_capacity;
    (celsius - t > cooling ? low : high) = t;
  }
  return low;
}

double Liquid::rate(double celsius, double share, double humidity) const {
  const double t = celsius - share * (celsius - wet_bulb(celsius, humidity));
  const double moles = (vapour_pressure(t) - humidity * vapour_pressure(celsius)) / (t + zero_celsius);
  return std::pow(diffusivity(t), 2.0 / 3) * moles * of_->litres;
}

double Liquid::activation(double share) const {
  constexpr double middle = 23, step = 1;
  const double slope = std::log(rate(middle + step, share) / rate(middle - step, share)) / (2 * step);
  return 1e-3 * gas_constant * std::pow(middle + zero_celsius, 2) * slope;
}

}  // namespace coatday::published
