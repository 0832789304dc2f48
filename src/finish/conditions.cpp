#include "finish/conditions.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "climate/surface.h"

namespace coatday::finish {

Hours can_time_constant(const Product& product) {
  Litres smallest = product.cans.empty() ? Litres(1) : product.cans.front().size;
  for (const Can& can : product.cans) smallest = std::min(smallest, can.size);
  constexpr double water = 4.18e6;                                                    // J/(m3 K)
  const double diameter = std::cbrt(4 * smallest.value() / 1000 / std::numbers::pi);  // of a cylinder as high as wide
  return climate::whole_minutes(climate::lumped_time_constant(water, Metres(diameter / 6)));
}

}  // namespace coatday::finish
