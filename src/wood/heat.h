#pragma once
// Heat in wood.

#include "quantity/quantity.h"

namespace coatday::wood {

/// J/(kg K), of wood below fibre saturation; 7 to 147 °C. Source: Wood Handbook (FPL-GTR-190) eqs 4-16a, 4-17 and 4-18, the equation numbers
/// from memory, the coefficients as a library of wood properties quotes them.
[[nodiscard]] double specific_heat(Celsius, MoistureContent);

/// kg/m3 at 12 % moisture content of a dense furniture hardwood: white oak, specific gravity 0.68 at 12 % (Wood Handbook table 5-3, from
/// memory), times 1000 (1 + 0.12). Lighter wood comes to temperature sooner, so this is the slow side for it.
inline constexpr double dense_hardwood = 762;

}  // namespace coatday::wood
