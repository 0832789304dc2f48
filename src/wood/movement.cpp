#include "wood/movement.h"

#include <fmt/core.h>

#include <cmath>
#include <numbers>

namespace coatday::wood {

double coefficient_across(const Species& species, RingAngle angle) {
  const double across = std::pow(std::sin(angle.value() * std::numbers::pi / 180), 2);
  return species.radial * across + species.tangential * (1 - across);
}

tl::expected<Metres, std::string> movement(Metres width, double coefficient, MoistureContent from, MoistureContent to) {
  for (const MoistureContent each : {from, to}) {
    if (holds_for_movement(each)) continue;
    return tl::make_unexpected(
        fmt::format("{:.1f} % of moisture is outside the 6 to 14 % in which the handbook's coefficients hold", 100 * each.value()));
  }
  return size_after(width, coefficient, from, to) - width;
}

}  // namespace coatday::wood
