// Every shape at its ends: as thin, as long or as hollow as it can be. Areas and volumes after CRC Standard Mathematical Tables and
// Formulae, mensuration (from memory): a rectangle a b, a prism P h around and B h within, a cylinder pi d h and pi d² h / 4.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "piece/heat.h"
#include "tests/piece/look_up.h"

namespace coatday::piece {
namespace {

using std::numbers::pi;

double total(const Shape& shape) { return total_area(faces_of(shape)).value(); }

constexpr double thin = 1e-6, longest = 1e4;  // m

/// Volume over surface, which is what heat has to go through: the section's depth.
void expect_depth(const Shape& shape, double volume) { EXPECT_NEAR(section(shape).depth.value() / (volume / total(shape)), 1, 1e-4); }

TEST(Extremes, AThinBoardIsItsTwoFaces) {
  const Shape board = Board{Metres(2), Metres(0.5), Metres(thin)};
  EXPECT_NEAR(total(board), 2 * 2 * 0.5, 1e-5);
  expect_depth(board, 2 * 0.5 * thin);
}

TEST(Extremes, ACubeIsSixSquares) { EXPECT_NEAR(total(Board{Metres(0.3), Metres(0.3), Metres(0.3)}), 6 * 0.09, 1e-12); }

TEST(Extremes, AThinRoundTopIsTwoCircles) {
  const Shape top = RoundTop{Metres(1), Metres(thin)};
  EXPECT_NEAR(total(top), pi / 2, 1e-5);
  expect_depth(top, pi / 4 * thin);
}

TEST(Extremes, ALegWithoutATaperIsAPrism) {
  const Shape leg = TaperedLeg{Metres(longest), Metres(0.05), Metres(0.05)};
  EXPECT_NEAR(total(leg), 4 * 0.05 * longest + 2 * 0.0025, 1e-6);
  expect_depth(leg, 0.0025 * longest);
}

TEST(Extremes, ALegThatEndsInAPointIsAPyramid) {
  const Shape leg = TaperedLeg{Metres(0.4), Metres(0.6), Metres(0)};  // slant 0.5 of four triangles 0.6 wide
  EXPECT_NEAR(total(leg), 4 * 0.6 * 0.5 / 2 + 0.36, 1e-12);
}

TEST(Extremes, ATurnedLegThatEndsInAPointIsACone) {
  const Shape leg = TurnedLeg{{{Metres(0), Metres(0.6)}, {Metres(0.4), Metres(0)}}};  // pi r s, s = 0.5
  EXPECT_NEAR(total(leg), pi * 0.3 * 0.5 + pi * 0.09, 1e-12);
}

TEST(Extremes, ALongRodIsAllSide) {
  const Shape rod = RoundTube{Metres(longest), Metres(0.03), true};
  EXPECT_NEAR(total(rod), pi * 0.03 * longest + 2 * pi * 0.03 * 0.03 / 4, 1e-6);
  expect_depth(rod, pi * 0.03 * 0.03 / 4 * longest);
}

TEST(Extremes, ALongBarOfSteelIsAllSide) {
  const Shape bar = RectTube{Metres(longest), Metres(0.05), Metres(0.02), true};
  EXPECT_NEAR(total(bar), 2 * 0.07 * longest + 2 * 0.001, 1e-6);
  expect_depth(bar, 0.001 * longest);
}

TEST(Extremes, AThinTubeIsAsDeepAsItsWall) {
  const Shape round = RoundTube{Metres(longest), Metres(0.03), false, Metres(thin)};
  expect_depth(round, pi * 0.03 * thin * longest);
  const Shape square = RectTube{Metres(longest), Metres(0.03), Metres(0.03), false, Metres(thin)};
  expect_depth(square, 4 * 0.03 * thin * longest);
}

TEST(Extremes, ACaseOfThinBoardsIsFiveSheetsTwice) {
  const Shape box = Case{Metres(0.8), Metres(0.5), Metres(0.3), Metres(thin)};
  EXPECT_NEAR(total(box), 2 * (2 * 0.5 * 0.3 + 2 * 0.8 * 0.3 + 0.8 * 0.5), 1e-4);
}

TEST(Extremes, ACaseWhoseBoardsMeetHasNoInside) {
  const Shape box = Case{Metres(0.4), Metres(0.4), Metres(0.3), Metres(0.2)};
  EXPECT_NEAR(total(box), 2 * 0.16 + 4 * 0.12, 1e-12) << "it is a block";
}

TEST(Extremes, ADoorWithoutARecessIsABoard) {
  const Shape door = Door{Metres(0.4), Metres(0.6), Metres(0.02), Metres(0.06), Metres(0)};
  EXPECT_NEAR(total(door), 2 * (0.4 * 0.6 + 0.4 * 0.02 + 0.6 * 0.02), 1e-12);
}

TEST(Extremes, ADoorThatIsAllFrameHasNoWallsOfARecess) {
  const Shape door = Door{Metres(0.4), Metres(0.4), Metres(0.02), Metres(0.2), Metres(0.005)};
  EXPECT_NEAR(total(door), 2 * (0.16 + 2 * 0.4 * 0.02), 1e-12);
}

TEST(Extremes, AThinBowlHasItsVolumeBetweenTwoSheets) {
  const Shape bowl = Bowl{Metres(0.2), Metres(0.1), Metres(thin)};
  expect_depth(bowl, 2 * pi * 0.01 * thin);
}

TEST(Extremes, AThinVesselHasItsVolumeBetweenTwoSheets) {
  const Shape vessel = Vessel{{{Metres(0), Metres(0.06)}, {Metres(0.2), Metres(0.06)}}, Metres(thin), Metres(0.2 - thin)};
  expect_depth(vessel, (pi * 0.06 * 0.2 + pi * 0.0009) * thin);
}

}  // namespace
}  // namespace coatday::piece
