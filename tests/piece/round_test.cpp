// Faces of revolution against closed forms (CRC Standard Mathematical Tables and Formulae, mensuration; from memory) and against the sum of
// the triangles of a fine mesh.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/piece/look_up.h"

namespace coatday::piece {
namespace {

using std::numbers::pi;
using testing::area_of;

struct Point {
  double x, y, z;
};

double triangle(Point a, Point b, Point c) {
  const Point u{b.x - a.x, b.y - a.y, b.z - a.z}, v{c.x - a.x, c.y - a.y, c.z - a.z};
  return std::hypot(u.y * v.z - u.z * v.y, u.z * v.x - u.x * v.z, u.x * v.y - u.y * v.x) / 2;
}

/// Area of the profile revolved, as flat triangles between `around` meridians.
double mesh_area(const std::vector<ProfilePoint>& profile, int around) {
  const auto on = [&](const ProfilePoint& p, int i) {
    const double angle = 2 * pi * i / around, radius = p.diameter.value() / 2;
    return Point{radius * std::cos(angle), radius * std::sin(angle), p.at.value()};
  };
  double sum = 0;
  for (std::size_t k = 1; k < profile.size(); ++k)
    for (int i = 0; i < around; ++i) {
      const Point a = on(profile[k - 1], i), b = on(profile[k - 1], i + 1), c = on(profile[k], i), d = on(profile[k], i + 1);
      sum += triangle(a, b, c) + triangle(b, c, d);
    }
  return sum;
}

TEST(RoundTop, IsADisc) {
  const Shape top = RoundTop{Metres(1.2), Metres(0.03)};
  EXPECT_NEAR(area_of(top, "face"), pi * 0.36, 1e-12);
  EXPECT_NEAR(area_of(top, "underside"), pi * 0.36, 1e-12);
  EXPECT_NEAR(area_of(top, "edge"), pi * 1.2 * 0.03, 1e-12);
  EXPECT_TRUE(testing::face_named(faces_of(top), "edge").end_grain);
}

TEST(TurnedLeg, OfOneDiameterIsACylinder) {
  const Shape leg = TurnedLeg{{{Metres(0), Metres(0.05)}, {Metres(0.7), Metres(0.05)}}};
  EXPECT_NEAR(area_of(leg, "all round"), pi * 0.05 * 0.7, 1e-12);
  EXPECT_NEAR(area_of(leg, "foot end"), pi * 0.000625, 1e-12);
}

// Radii 5 and 2, height 4, slant 5: pi (R + r) s = 35 pi.
TEST(TurnedLeg, OfTwoDiametersIsAFrustumOfACone) {
  const Shape leg = TurnedLeg{{{Metres(0), Metres(10)}, {Metres(4), Metres(4)}}};
  EXPECT_NEAR(area_of(leg, "all round"), 35 * pi, 1e-9);
  EXPECT_NEAR(area_of(leg, "top end"), 25 * pi, 1e-9);
  EXPECT_NEAR(area_of(leg, "foot end"), 4 * pi, 1e-9);
}

TEST(TurnedLeg, CountsTheFlatRingOfAShoulder) {
  const Shape leg = TurnedLeg{{{Metres(0), Metres(4)}, {Metres(3), Metres(4)}, {Metres(3), Metres(2)}, {Metres(8), Metres(2)}}};
  EXPECT_NEAR(area_of(leg, "all round"), pi * (4 * 3 + (4 - 1) + 2 * 5), 1e-9);
}

RC_GTEST_PROP(TurnedLeg, AgreesWithAMesh, ()) {
  std::vector<ProfilePoint> profile;
  double at = 0;
  for (const int step : *rc::gen::container<std::vector<int>>(5, rc::gen::inRange(5, 200))) {
    at += step * 0.001;
    profile.push_back({Metres(at), Metres(*rc::gen::inRange(10, 120) * 0.001)});
  }
  const double expected = mesh_area(profile, 2000);
  RC_ASSERT(std::abs(area_of(TurnedLeg{profile}, "all round") / expected - 1) < 1e-5);
}

TEST(RoundTube, IsOpenUnlessItsEndsAreClosed) {
  EXPECT_EQ(faces_of(RoundTube{Metres(0.8), Metres(0.025), false}).size(), 1U);
  const Shape rod = RoundTube{Metres(0.8), Metres(0.025), true};
  EXPECT_NEAR(area_of(rod, "outside"), pi * 0.025 * 0.8, 1e-12);
  EXPECT_NEAR(area_of(rod, "right end"), pi * 0.0125 * 0.0125, 1e-12);
}

// A sphere of radius 5 cut 2 above its lowest point: rim radius 4, cap area 2 pi R h = 20 pi.
TEST(Bowl, OutsideIsASphericalCap) { EXPECT_NEAR(area_of(Bowl{Metres(8), Metres(2), Metres(0.1)}, "outside"), 20 * pi, 1e-9); }

TEST(Bowl, WallMakesTheInsideSmaller) {
  const Shape bowl = Bowl{Metres(0.3), Metres(0.1), Metres(0.01)};
  EXPECT_NEAR(area_of(bowl, "inside"), pi * (0.14 * 0.14 + 0.09 * 0.09), 1e-12);
  EXPECT_NEAR(area_of(bowl, "rim"), pi * (0.15 * 0.15 - 0.14 * 0.14), 1e-12);
  EXPECT_EQ(testing::face_named(faces_of(bowl), "outside").pass, Pass::first);
  EXPECT_EQ(testing::face_named(faces_of(bowl), "inside").pass, Pass::second);
}

RC_GTEST_PROP(Bowl, OutsideAgreesWithAMeshOfTheArc, ()) {
  const double rim = *rc::gen::inRange(50, 250) * 0.001, height = *rc::gen::inRange(20, 100) * 0.001 * rim / 0.1;
  const double radius = (rim * rim + height * height) / (2 * height);
  std::vector<ProfilePoint> arc;
  for (int i = 0; i <= 200; ++i) {
    const double rise = height * i / 200;
    arc.push_back({Metres(rise), Metres(2 * std::sqrt(std::max(0.0, rise * (2 * radius - rise))))});
  }
  const double outside = area_of(Bowl{Metres(2 * rim), Metres(height), Metres(0.005)}, "outside");
  RC_ASSERT(std::abs(outside / mesh_area(arc, 100) - 1) < 1e-3);
}

TEST(Bowl, IsWithinATenthOfAStraightSidedOne) {
  for (const double foot : {1.0 / 3, 0.4, 0.5})
    for (const double height : {0.25, 0.3, 0.35, 0.4}) {
      const double side = area_of(TurnedLeg{{{Metres(0), Metres(foot)}, {Metres(height), Metres(1)}}}, "all round");
      const double straight = side + pi * foot * foot / 4;
      EXPECT_NEAR(area_of(Bowl{Metres(1), Metres(height), Metres(0.02)}, "outside") / straight, 1, 0.1) << foot << ' ' << height;
    }
}

// A hemisphere has the area 2 pi r² (CRC, mensuration; from memory). Beyond it a cap is no bowl: its wall leans inwards.
TEST(Bowl, AsHighAsHalfItsWidthIsAHemisphere) {
  EXPECT_NEAR(area_of(Bowl{Metres(0.2), Metres(0.1), Metres(0.01)}, "outside"), 2 * pi * 0.01, 1e-12);
  EXPECT_NEAR(area_of(Bowl{Metres(0.2), Metres(0.1), Metres(0.01)}, "inside"), 2 * pi * 0.0081, 1e-12);
}
TEST(Bowl, AsFlatAsCanBeIsADisc) { EXPECT_NEAR(area_of(Bowl{Metres(0.2), Metres(1e-7), Metres(0)}, "outside"), pi * 0.01, 1e-12); }

Vessel cup(double wall, double depth) { return {{{Metres(0), Metres(0.06)}, {Metres(0.2), Metres(0.06)}}, Metres(wall), Metres(depth)}; }

// Curved surface of a cylinder pi d h, and a circle at its end.
TEST(Vessel, OfOneDiameterIsACup) {
  EXPECT_NEAR(area_of(cup(0.004, 0.196), "outside"), pi * (0.06 * 0.2 + 0.0009), 1e-12);
  EXPECT_NEAR(area_of(cup(0.004, 0.196), "inside"), pi * (0.052 * 0.196 + 0.000676), 1e-12);
  EXPECT_NEAR(area_of(cup(0.004, 0.196), "rim"), pi * (0.0009 - 0.000676), 1e-12);
}
TEST(Vessel, WithoutAWallIsTheSameInsideAndOutside) {
  EXPECT_NEAR(area_of(cup(0, 0.2 - 1e-12), "inside"), area_of(cup(0, 0.2 - 1e-12), "outside"), 1e-12);
  EXPECT_NEAR(area_of(cup(0, 0.2), "rim"), 0, 1e-12);
}
TEST(Vessel, WhoseWallIsItsRadiusIsSolid) {
  EXPECT_NEAR(area_of(cup(0.03, 0.17), "inside"), 0, 1e-12);
  EXPECT_NEAR(area_of(cup(0.03, 0.17), "rim"), pi * 0.0009, 1e-12);
}

// Radii 5 and 2, height 4, slant 5: pi (R + r) s. The hollow ends half-way down, where its radius is 3.5 less the wall.
TEST(Vessel, OfTwoDiametersIsAFrustumOfACone) {
  const Shape vessel = Vessel{{{Metres(0), Metres(10)}, {Metres(4), Metres(4)}}, Metres(0.5), Metres(2)};
  EXPECT_NEAR(area_of(vessel, "outside"), 35 * pi + 4 * pi, 1e-9);
  EXPECT_NEAR(area_of(vessel, "inside"), pi * (4.5 + 3) * 2.5 + pi * 9, 1e-9);
}

RC_GTEST_PROP(Vessel, InsideAgreesWithAMesh, ()) {
  std::vector<ProfilePoint> outside, inside;
  double at = 0;
  for (const int step : *rc::gen::container<std::vector<int>>(5, rc::gen::inRange(5, 200))) {
    at += step * 0.001;
    const double diameter = *rc::gen::inRange(20, 120) * 0.001;
    outside.push_back({Metres(at), Metres(diameter)});
    inside.push_back({Metres(at), Metres(diameter - 0.01)});
  }
  const double floor = inside.back().diameter.value();
  outside.push_back({Metres(at + 0.01), Metres(0.05)});
  const Vessel vessel{outside, Metres(0.005), inside.back().at - inside.front().at};
  const double expected = mesh_area(inside, 2000) + pi * floor * floor / 4;
  RC_ASSERT(std::abs(area_of(vessel, "inside") / expected - 1) < 1e-5);
}

// A straight-sided cup of 60 mm and 200 mm: as a cap it would have three times its area.
TEST(Vessel, HasTheAreaThatABowlWouldNotHave) {
  const double as_a_cap = area_of(Bowl{Metres(0.06), Metres(0.2), Metres(0.004)}, "outside");
  EXPECT_GT(as_a_cap / area_of(cup(0.004, 0.196), "outside"), 3);
}

}  // namespace
}  // namespace coatday::piece
