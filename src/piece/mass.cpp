#include "piece/mass.h"

#include <algorithm>
#include <numbers>

#include "wood/heat.h"

namespace coatday::piece {
namespace {

using std::numbers::pi;

constexpr double steel_density = 7850;  // kg/m3
constexpr Metres usual_wall{0.002};     // of a tube
constexpr Metres usual_board{0.02};     // of a free shape of wood

constexpr double cubic(double metres, double by, double and_by) { return metres * by * and_by; }

/// A cone cut level, by its two sizes; `round` for a circle, 1 for a square.
double frustum(double height, double top, double foot, double round) { return round * height / 3 * (top * top + top * foot + foot * foot); }

double turned(const std::vector<ProfilePoint>& profile) {
  double sum = 0;
  for (std::size_t i = 1; i < profile.size(); ++i) {
    const double height = (profile[i].at - profile[i - 1].at).value();
    sum += frustum(height, profile[i - 1].diameter.value(), profile[i].diameter.value(), pi / 4);
  }
  return sum;
}

/// Cubic metres of each shape; a free shape's wall is given.
struct Filled {
  Metres free_wall;  // of a free shape without one

  double operator()(const Board& b) const { return cubic(b.length.value(), b.width.value(), b.thickness.value()); }
  double operator()(const RoundTop& top) const { return pi / 4 * cubic(top.diameter.value(), top.diameter.value(), top.thickness.value()); }
  double operator()(const TaperedLeg& leg) const { return frustum(leg.length.value(), leg.top.value(), leg.foot.value(), 1); }
  double operator()(const TurnedLeg& leg) const { return turned(leg.profile); }
  double operator()(const RoundTube& tube) const {
    const double outside = tube.diameter.value(), inside = std::max(0.0, outside - 2 * tube.wall.value_or(usual_wall).value());
    return pi / 4 * tube.length.value() * (outside * outside - inside * inside);
  }
  double operator()(const RectTube& tube) const {
    const double walls = 2 * tube.wall.value_or(usual_wall).value(), width = tube.width.value(), height = tube.height.value();
    return tube.length.value() * (width * height - std::max(0.0, width - walls) * std::max(0.0, height - walls));
  }
  double operator()(const Case& c) const {
    const SquareMetres boards = 2 * (c.height * c.depth) + 2 * (c.width * c.depth) + c.width * c.height;
    return boards.value() * c.thickness.value();
  }
  double operator()(const Door& d) const {
    const double panel = std::max(0.0, (d.width - 2 * d.frame).value()) * std::max(0.0, (d.height - 2 * d.frame).value());
    return cubic(d.width.value(), d.height.value(), d.thickness.value()) - panel * 2 * d.recess.value();
  }
  double operator()(const Bowl& bowl) const { return total_area(faces_of(Shape(bowl))).value() / 2 * bowl.wall.value(); }
  double operator()(const Vessel& vessel) const { return total_area(faces_of(Shape(vessel))).value() / 2 * vessel.wall.value(); }
  double operator()(const FreeArea& area) const {
    return total_area(faces_of(Shape(area))).value() * area.wall.value_or(free_wall).value();
  }
};

}  // namespace

Litres volume(const Part& part) {
  constexpr double litres_of_cubic_metre = 1000;
  return Litres(std::visit(Filled{part.wood() ? usual_board / 2 : usual_wall}, part.shape) * litres_of_cubic_metre);
}

Kilograms mass(const Part& part) {
  constexpr double cubic_metres_of_litre = 0.001;
  return Kilograms(volume(part).value() * cubic_metres_of_litre * (part.wood() ? wood::dense_hardwood : steel_density));
}

}  // namespace coatday::piece
