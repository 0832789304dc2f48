#include "piece/shape.h"

#include <algorithm>
#include <array>

#include "piece/faces_flat.h"
#include "piece/faces_round.h"

namespace coatday::piece {
namespace {

Footprint lying(Metres a, Metres b, Metres height) { return {std::max(a, b), std::min(a, b), height}; }

Footprint lies(const Board& b) { return lying(b.length, b.width, b.thickness); }
Footprint lies(const RoundTop& top) { return lying(top.diameter, top.diameter, top.thickness); }
Footprint lies(const TaperedLeg& leg) {
  const Metres thick = std::max(leg.top, leg.foot);
  return lying(leg.length, thick, thick);
}
Footprint lies(const TurnedLeg& leg) {
  if (leg.profile.empty()) return {};
  const Metres thick = widest(leg.profile);
  return lying(leg.profile.back().at - leg.profile.front().at, thick, thick);
}
Footprint lies(const RoundTube& tube) { return lying(tube.length, tube.diameter, tube.diameter); }
/// On its broader side.
Footprint lies(const RectTube& tube) { return lying(tube.length, std::max(tube.width, tube.height), std::min(tube.width, tube.height)); }
/// Stands on its bottom.
Footprint lies(const Case& c) { return lying(c.width, c.depth, c.height); }
Footprint lies(const Door& d) { return lying(d.width, d.height, d.thickness); }
Footprint lies(const Bowl& bowl) { return lying(bowl.diameter, bowl.diameter, bowl.height); }
/// Stands on its foot.
Footprint lies(const Vessel& vessel) {
  if (vessel.profile.empty()) return {};
  const Metres wide = widest(vessel.profile);
  return lying(wide, wide, vessel.profile.back().at - vessel.profile.front().at);
}
Footprint lies(const FreeArea& given) { return lying(given.length, given.width, given.height); }

}  // namespace

Metres widest(const std::vector<ProfilePoint>& profile) {
  Metres most;
  for (const ProfilePoint& point : profile) most = std::max(most, point.diameter);
  return most;
}

std::vector<Face> faces_of(const Shape& shape) {
  return std::visit([](const auto& kind) { return faces(kind); }, shape);
}

SquareMetres total_area(const std::vector<Face>& all) {
  SquareMetres sum;
  for (const Face& face : all) sum += face.area;
  return sum;
}

Footprint footprint(const Shape& shape) {
  return std::visit([](const auto& kind) { return lies(kind); }, shape);
}

std::string_view shape_word(const Shape& shape) {
  static constexpr std::array<std::string_view, std::variant_size_v<Shape>> words{
      "board", "round top", "tapered leg", "turned leg", "round tube", "rect tube", "case", "door", "bowl", "vessel", "free"};
  return words[shape.index()];
}

}  // namespace coatday::piece
