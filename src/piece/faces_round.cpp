#include "piece/faces_round.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>

namespace coatday::piece {
namespace {

// Closed forms after CRC Standard Mathematical Tables and Formulae, mensuration (from memory).

using std::numbers::pi;

SquareMetres circle(Metres diameter) { return diameter * diameter * (pi / 4); }

SquareMetres cylinder(Metres diameter, Metres length) { return diameter * length * pi; }

/// Slant surface of a frustum of a cone, pi (R + r) s. Two points at one place give the flat ring of a shoulder.
SquareMetres frustum(const ProfilePoint& a, const ProfilePoint& b) {
  const double slant = std::hypot((b.at - a.at).value(), (b.diameter - a.diameter).value() / 2);
  return (a.diameter + b.diameter) / 2 * Metres(slant) * pi;
}

SquareMetres revolved(std::span<const ProfilePoint> profile) {
  SquareMetres sum;
  for (std::size_t i = 1; i < profile.size(); ++i) sum += frustum(profile[i - 1], profile[i]);
  return sum;
}

/// Curved surface of a spherical cap, pi (a² + h²) with a the radius of its rim.
SquareMetres cap(Metres radius, Metres height) { return (radius * radius + height * height) * pi; }

/// The profile of the hollow, from the rim down to its floor.
std::vector<ProfilePoint> hollow(const Vessel& vessel) {
  const auto narrowed = [&vessel](Metres diameter) { return std::max(Metres(0), diameter - vessel.wall * 2); };
  const Metres floor = vessel.profile.front().at + vessel.depth;
  std::vector<ProfilePoint> inside;
  for (const ProfilePoint& point : vessel.profile) {
    if (point.at < floor || inside.empty()) {
      inside.push_back({point.at, narrowed(point.diameter)});
      continue;
    }
    const ProfilePoint& above = inside.back();
    const double share = (floor - above.at) / (point.at - above.at);
    inside.push_back({floor, above.diameter + (narrowed(point.diameter) - above.diameter) * share});
    break;
  }
  return inside;
}

/// The surface that stands on the bottom of a profile, with the bottom.
SquareMetres with_bottom(std::span<const ProfilePoint> profile) { return revolved(profile) + circle(profile.back().diameter); }

Face end(std::string name, Metres diameter) { return {std::move(name), circle(diameter), FaceKind::end, true, Pass::second, true, {}}; }

}  // namespace

std::vector<Face> faces(const RoundTop& top) {
  const SquareMetres broad = circle(top.diameter);
  return {{"face", broad, FaceKind::broad, false, Pass::second, true, "underside"},
          {"underside", broad, FaceKind::broad, false, Pass::first, false, "face"},
          {"edge", cylinder(top.diameter, top.thickness), FaceKind::edge, true, Pass::second, true, {}}};
}

std::vector<Face> faces(const TurnedLeg& leg) {
  if (leg.profile.empty()) return {};
  Face top_end = end("top end", leg.profile.front().diameter);
  top_end.show = false;
  return {{"all round", revolved(leg.profile), FaceKind::round, false, Pass::second, true, {}},
          top_end,
          end("foot end", leg.profile.back().diameter)};
}

std::vector<Face> faces(const RoundTube& tube) {
  std::vector<Face> all{{"outside", cylinder(tube.diameter, tube.length), FaceKind::round, false, Pass::second, true, {}}};
  if (!tube.closed_ends) return all;
  for (const char* name : {"left end", "right end"}) all.push_back(end(name, tube.diameter));
  return all;
}

std::vector<Face> faces(const Bowl& bowl) {
  const Metres outer = bowl.diameter / 2, inner = std::max(Metres(0), outer - bowl.wall),
               deep = std::max(Metres(0), bowl.height - bowl.wall);
  const SquareMetres rim = circle(outer * 2) - circle(inner * 2);
  return {{"inside", cap(inner, deep), FaceKind::broad, false, Pass::second, true, "outside"},
          {"outside", cap(outer, bowl.height), FaceKind::broad, false, Pass::first, true, "inside"},
          {"rim", rim, FaceKind::edge, false, Pass::second, true, {}}};
}

std::vector<Face> faces(const Vessel& vessel) {
  if (vessel.profile.empty()) return {};
  const std::vector<ProfilePoint> inside = hollow(vessel);
  const SquareMetres rim = circle(vessel.profile.front().diameter) - circle(inside.front().diameter);
  return {{"inside", with_bottom(inside), FaceKind::broad, false, Pass::second, true, "outside"},
          {"outside", with_bottom(vessel.profile), FaceKind::broad, false, Pass::first, true, "inside"},
          {"rim", rim, FaceKind::edge, false, Pass::second, true, {}}};
}

}  // namespace coatday::piece
