#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "shop/shop.h"

namespace coatday::shop {
namespace {

/// How many of a size stand in a row. A side that is not given does not bind, and is used once.
double in_a_row(std::optional<Metres> room, Metres size) {
  constexpr Metres least(0.001);     // and no row is endless
  constexpr double rounding = 1e-9;  // three times 0.1 m do fit into 0.3 m
  return room ? std::floor(*room / std::max(size, least) + rounding) : 1;
}

double in_a_grid(const DryingPlace& place, Metres along, Metres across) {
  return in_a_row(place.length, along) * in_a_row(place.width, across);
}

}  // namespace

std::string_view word(PlaceKind kind) {
  static constexpr std::array<std::string_view, 4> words{"points", "hooks", "rack", "floor"};
  return words[static_cast<std::size_t>(kind)];
}

int fits(const DryingPlace& place, Metres length, Metres width) {
  if (place.kind == PlaceKind::hooks) return in_a_row(place.length, std::max(length, width)) >= 1 ? 1 : 0;
  const double best = std::max(in_a_grid(place, length, width), in_a_grid(place, width, length));
  return static_cast<int>(std::min(best, double{std::numeric_limits<int>::max()}));
}

}  // namespace coatday::shop
