#pragma once
// How fast moisture moves across the grain of wood, and how temperature changes that.

#include "climate/air.h"
#include "wood/slab.h"

namespace coatday::wood {

/// The published spread, which is wide: a result is shown at each of the three.
struct DiffusionBand {
  Diffusivity low, middle, high;
};

/// Across the grain, for wood in rooms. At 20 °C: spruce 1.0e-10 m²/s across the rings (Sanchez-Ferrer and Engelhardt, dynamic vapour
/// sorption, doi 10.1038/s41598-026-38932-7, abstract seen; its temperature was not, 20 °C is a judgement). Low: a third of it, beech
/// being two to three times slower than spruce; high: twice it, the steady coefficient being about twice the unsteady one (both
/// Sonderegger et al., Holzforschung 65 (2011) 819, abstract seen). Middle: their geometric mean. Taken as independent of moisture, though
/// aspen's grows eightfold from 2.5 to 18 % (Simpson, Wood and Fiber Science, abstract seen). With temperature by an activation energy of
/// 40 kJ/mol: a judgement between bound water, 36 at 10 % (Siau, from memory), and vapour, 44.
[[nodiscard]] DiffusionBand diffusion_across(Celsius);
/// Along the grain it is up to twelve times as fast (spruce; the same paper of 2011).
inline constexpr double along_over_across = 12;

/// Between a bare face and still air: 1.5e6 s/m, from a heat transfer of 3 W/(m² K) and the analogy of heat and vapour (judgement; a small
/// share of any film's).
inline constexpr FilmResistance still_air{1.5e6};

/// Films are measured at 80 °F (26.7 °C).
inline constexpr Celsius film_test_temperature{80.0 / 1.8 - 32 / 1.8};
/// A film's resistance at another temperature: what drives vapour through it is the pressure of saturation, its permeability is taken as
/// the same (judgement).
[[nodiscard]] double film_factor(Celsius);

}  // namespace coatday::wood
