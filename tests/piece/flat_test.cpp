// Plane faces against closed forms and against bodies built of cubes.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "tests/piece/cubes.h"
#include "tests/piece/look_up.h"

namespace coatday::piece {
namespace {

using testing::area_of;
using testing::exposed_faces;
using testing::face_named;

Metres m(int whole) { return Metres(whole); }

TEST(Board, HasSixFacesOfABox) {
  const Shape top = Board{Metres(1.7), Metres(0.9), Metres(0.04)};
  EXPECT_DOUBLE_EQ(area_of(top, "face"), 1.53);
  EXPECT_DOUBLE_EQ(area_of(top, "underside"), 1.53);
  EXPECT_DOUBLE_EQ(area_of(top, "front edge"), 0.068);
  EXPECT_DOUBLE_EQ(area_of(top, "left end"), 0.036);
}

TEST(Board, UndersideGoesFirstAndEdgesWithTheFace) {
  for (const Face& face : faces_of(Board{m(3), m(2), m(1)})) {
    EXPECT_EQ(face.pass, face.name == "underside" ? Pass::first : Pass::second) << face.name;
    EXPECT_EQ(face.show, face.name != "underside") << face.name;
    EXPECT_EQ(face.end_grain, face.kind == FaceKind::end) << face.name;
  }
}

RC_GTEST_PROP(Board, SumsToTheSurfaceOfABox, ()) {
  const auto l = *rc::gen::inRange(1, 4000), w = *rc::gen::inRange(1, 4000), t = *rc::gen::inRange(1, 200);
  RC_ASSERT(std::abs(total_area(faces_of(Board{m(l), m(w), m(t)})).value() - 2.0 * (double(l) * w + double(w) * t + double(t) * l)) < 1e-6);
}

// Sides 6 and 2 wide on a slant of 5 = sqrt(4.5826² + 2²).
TEST(TaperedLeg, SidesAreTrapezoidsOfTrueSlantHeight) {
  const Shape leg = TaperedLeg{Metres(std::sqrt(21.0)), Metres(6), Metres(2)};
  for (const char* side : {"front", "back", "left", "right"}) EXPECT_DOUBLE_EQ(area_of(leg, side), 20.0) << side;
  EXPECT_DOUBLE_EQ(area_of(leg, "top end"), 36.0);
  EXPECT_DOUBLE_EQ(area_of(leg, "foot end"), 4.0);
}

TEST(TaperedLeg, WithoutTaperIsABox) {
  const auto leg = faces_of(TaperedLeg{Metres(0.7), Metres(0.05), Metres(0.05)});
  const auto box = faces_of(Board{Metres(0.7), Metres(0.05), Metres(0.05)});
  EXPECT_NEAR(total_area(leg).value(), total_area(box).value(), 1e-12);
}

TEST(TaperedLeg, EachPassWetsTwoSidesThatMeet) {
  const auto leg = faces_of(TaperedLeg{Metres(0.7), Metres(0.05), Metres(0.03)});
  EXPECT_EQ(face_named(leg, "back").pass, Pass::first);
  EXPECT_EQ(face_named(leg, "left").pass, Pass::first);
  EXPECT_EQ(face_named(leg, "front").pass, Pass::second);
  EXPECT_EQ(face_named(leg, "right").pass, Pass::second);
  for (const Face& face : leg) EXPECT_EQ(face.show, face.name != "top end") << face.name;
}

TEST(RectTube, OutsideIsItsGirthTimesItsLength) {
  const auto open = faces_of(RectTube{m(10), m(3), m(2), false});
  ASSERT_EQ(open.size(), 1U);
  EXPECT_DOUBLE_EQ(open[0].area.value(), 100.0);
  const auto capped = faces_of(RectTube{m(10), m(3), m(2), true});
  EXPECT_DOUBLE_EQ(total_area(capped).value(), exposed_faces({10, 3, 2}, [](int, int, int) { return true; }));
}

RC_GTEST_PROP(Case, SumsToTheSurfaceOfACarcaseBuiltOfCubes, ()) {
  const auto t = *rc::gen::inRange(1, 4);
  const auto w = *rc::gen::inRange(2 * t + 1, 20), h = *rc::gen::inRange(2 * t + 1, 20), d = *rc::gen::inRange(t + 1, 20);
  const auto solid = [&](int x, int y, int z) { return x < t || x >= w - t || y < t || y >= h - t || z >= d - t; };
  RC_ASSERT(total_area(faces_of(Case{m(w), m(h), m(d), m(t)})).value() == exposed_faces({w, h, d}, solid));
}

TEST(Case, InsideIsSmallerByTheBoards) {
  const Shape box = Case{m(30), m(20), m(12), m(1)};
  EXPECT_DOUBLE_EQ(area_of(box, "inside left side"), 18 * 11);
  EXPECT_DOUBLE_EQ(area_of(box, "outside left side"), 20 * 12);
  EXPECT_DOUBLE_EQ(area_of(box, "inside top"), 28 * 11);
  EXPECT_DOUBLE_EQ(area_of(box, "inside back"), 28 * 18);
  EXPECT_DOUBLE_EQ(area_of(box, "outside back"), 30 * 20);
  EXPECT_DOUBLE_EQ(area_of(box, "front edges"), 30 * 20 - 28 * 18);
}

TEST(Case, InsidesBackAndBottomGoFirst) {
  for (const Face& face : faces_of(Case{m(30), m(20), m(12), m(1)})) {
    const bool first = face.name.starts_with("inside") || face.name == "outside back" || face.name == "outside bottom";
    EXPECT_EQ(face.pass, first ? Pass::first : Pass::second) << face.name;
  }
}

TEST(Case, BoardsThickerThanTheCaseLeaveNoInside) { EXPECT_EQ(area_of(Case{m(3), m(3), m(1), m(2)}, "inside top"), 0.0); }

RC_GTEST_PROP(Door, SumsToTheSurfaceOfADoorBuiltOfCubes, ()) {
  const auto frame = *rc::gen::inRange(1, 4), recess = *rc::gen::inRange(0, 3);
  const auto w = *rc::gen::inRange(2 * frame + 1, 20), h = *rc::gen::inRange(2 * frame + 1, 20), t = *rc::gen::inRange(2 * recess + 1, 9);
  const auto solid = [&](int x, int y, int z) {
    const bool panel = x >= frame && x < w - frame && y >= frame && y < h - frame;
    return !panel || (z >= recess && z < t - recess);
  };
  RC_ASSERT(total_area(faces_of(Door{m(w), m(h), m(t), m(frame), m(recess)})).value() == exposed_faces({w, h, t}, solid));
}

// "Panelled doors: double the area; edges counted twice": Cyclopedia of construction vol. 10, "Rules for Outside Measurements". The rule
// pays for labour too, so it bounds the area from above.
TEST(Door, StaysBelowTheOldEstimatingRule) {
  const Door door{Metres(0.375), Metres(0.483), Metres(0.019), Metres(0.057), Metres(0.006)};
  const double flat = 2 * 0.375 * 0.483, edges = 2 * (0.375 + 0.483) * 0.019;
  const double all = total_area(faces_of(door)).value();
  EXPECT_GT(all, flat + edges);
  EXPECT_LT(all, flat + 2 * edges);
}

TEST(Door, BackGoesFirst) {
  for (const Face& face : faces_of(Door{m(30), m(40), m(3), m(5), m(1)}))
    EXPECT_EQ(face.pass, face.name == "back" ? Pass::first : Pass::second) << face.name;
}

TEST(FreeArea, TakesFacesAsGiven) {
  const FreeFace carved{"carved", SquareMetres(0.26), "back", false, true}, back{"back", SquareMetres(0.2), "carved", false, false};
  const FreeFace ends{"ends", SquareMetres(0.02), {}, true, true};
  const auto all = faces_of(FreeArea{{carved, back, ends}, m(1), m(1), m(1)});
  ASSERT_EQ(all.size(), 3U);
  EXPECT_EQ(all[0].pass, Pass::second);
  EXPECT_EQ(all[0].opposite, "back");
  EXPECT_EQ(all[1].pass, Pass::first);
  EXPECT_EQ(all[2].kind, FaceKind::end);
  EXPECT_TRUE(all[2].end_grain);
  EXPECT_DOUBLE_EQ(total_area(all).value(), 0.48);
}

}  // namespace
}  // namespace coatday::piece
