#pragma once
// Wood and the water in the air.

#include "climate/air.h"
#include "wood/species.h"

namespace coatday::wood {

/// Equilibrium moisture content. Source: Wood Handbook (FPL-GTR-190) eq. 4-5 in °C; table 4-2 agrees within 0.07 % MC.
/// A real piece is within about 1 % MC of it, by species and by whether it came from damp or from dry (common practice, no source).
[[nodiscard]] MoistureContent equilibrium_moisture(const climate::Air&);

/// Whether table 4-2 includes this air, so that the equation is confirmed there: from 30 °F (-1.1 °C), 5 to 95 % RH.
[[nodiscard]] bool in_moisture_table(const climate::Air&);

/// Size after a change of moisture content, 6 to 14 %: D = D_i [1 + C (M_f - M_i)]. Source: Wood Handbook eq. 13-2.
[[nodiscard]] Metres size_after(Metres initial, double coefficient, MoistureContent from, MoistureContent to);

}  // namespace coatday::wood
