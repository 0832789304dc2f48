#include "piece/heat.h"

#include <algorithm>

#include "climate/surface.h"
#include "wood/heat.h"

namespace coatday::piece {
namespace {

constexpr double steel = 7850.0 * 490.0;  // J/(m3 K)

Section slab(Metres thickness) { return {thickness, thickness / 2}; }
Section bar(Metres across) { return {across, across / 4}; }
Section hollow(Metres wall) { return {wall, wall}; }

Section of(const Board& b) { return slab(b.thickness); }
Section of(const RoundTop& top) { return slab(top.thickness); }
Section of(const TaperedLeg& leg) { return bar(std::max(leg.top, leg.foot)); }
Section of(const TurnedLeg& leg) { return bar(widest(leg.profile)); }
Section of(const RoundTube& tube) { return tube.wall ? hollow(*tube.wall) : bar(tube.diameter); }
Section of(const RectTube& tube) {
  if (tube.wall) return hollow(*tube.wall);
  return {std::min(tube.width, tube.height), Metres((tube.width * tube.height).value() / (2 * (tube.width + tube.height)).value())};
}
Section of(const Case& c) { return slab(c.thickness); }
Section of(const Door& d) { return slab(d.thickness); }
Section of(const Bowl& bowl) { return slab(bowl.wall); }
Section of(const Vessel& vessel) { return slab(vessel.wall); }
Section of(const FreeArea& area) { return area.wall ? hollow(*area.wall) : slab(std::min({area.length, area.width, area.height})); }

}  // namespace

Section section(const Shape& shape) {
  return std::visit([](const auto& kind) { return of(kind); }, shape);
}

Hours time_constant(const Part& part) {
  const double capacity = part.wood() ? wood::dense_hardwood * wood::specific_heat(Celsius(20), MoistureContent(0.12)) : steel;
  return climate::whole_minutes(climate::lumped_time_constant(capacity, section(part.shape).depth));
}

}  // namespace coatday::piece
