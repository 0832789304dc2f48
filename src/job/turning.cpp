#include "job/turning.h"

#include <algorithm>

#include "piece/mass.h"

namespace coatday::job {

bool too_heavy_for_one(const piece::Part& part) { return piece::mass(part) > lifted_alone; }

int turning_people(const piece::Part& part, const shop::Shop& shop) {
  return part.turning_people.value_or(too_heavy_for_one(part) ? std::min(2, shop.people) : 1);
}

Hours turning_time(const piece::Part& part, const shop::Shop& shop) {
  if (shop.turning) return *shop.turning;
  constexpr double to_begin = 10, a_kilogram = 10, a_metre = 20;  // seconds
  const double held = piece::mass(part).value() / turning_people(part, shop);
  const double seconds = to_begin + a_kilogram * held + a_metre * piece::footprint(part.shape).length.value();
  return std::chrono::duration<double>(seconds);
}

}  // namespace coatday::job
