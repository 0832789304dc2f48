#include <gtest/gtest.h>

#include "piece/shape.h"

namespace coatday::piece {
namespace {

void expect_footprint(const Shape& shape, double length, double width, double height) {
  const Footprint lies = footprint(shape);
  EXPECT_EQ(lies.length, Metres(length)) << shape_word(shape);
  EXPECT_EQ(lies.width, Metres(width)) << shape_word(shape);
  EXPECT_EQ(lies.height, Metres(height)) << shape_word(shape);
}

TEST(Footprint, OfABoardIsItsFaceWhicheverSideIsLonger) { expect_footprint(Board{Metres(0.5), Metres(1.5), Metres(0.02)}, 1.5, 0.5, 0.02); }
TEST(Footprint, OfARoundTopIsASquare) { expect_footprint(RoundTop{Metres(1.2), Metres(0.03)}, 1.2, 1.2, 0.03); }
TEST(Footprint, OfATaperedLegIsAsWideAsItsTop) { expect_footprint(TaperedLeg{Metres(0.7), Metres(0.05), Metres(0.03)}, 0.7, 0.05, 0.05); }
TEST(Footprint, OfATurnedLegIsAsWideAsItsThickestPoint) {
  const TurnedLeg leg{{{Metres(0.1), Metres(0.04)}, {Metres(0.3), Metres(0.06)}, {Metres(0.85), Metres(0.02)}}};
  expect_footprint(leg, 0.75, 0.06, 0.06);
}
TEST(Footprint, OfARectTubeIsOnItsBroaderSide) {
  expect_footprint(RectTube{Metres(0.8), Metres(0.02), Metres(0.05), false}, 0.8, 0.05, 0.02);
}
TEST(Footprint, OfARoundTubeIsAsWideAsItIsThick) { expect_footprint(RoundTube{Metres(0.8), Metres(0.025), true}, 0.8, 0.025, 0.025); }
TEST(Footprint, OfACaseStandsOnItsBottom) { expect_footprint(Case{Metres(0.3), Metres(1.8), Metres(0.4), Metres(0.02)}, 0.4, 0.3, 1.8); }
TEST(Footprint, OfADoorLiesFlat) {
  expect_footprint(Door{Metres(0.4), Metres(0.6), Metres(0.02), Metres(0.05), Metres(0.005)}, 0.6, 0.4, 0.02);
}
TEST(Footprint, OfABowlStands) { expect_footprint(Bowl{Metres(0.3), Metres(0.1), Metres(0.01)}, 0.3, 0.3, 0.1); }
TEST(Footprint, OfAVesselStands) {
  expect_footprint(Vessel{{{Metres(0), Metres(0.06)}, {Metres(0.2), Metres(0.08)}}, Metres(0.004), Metres(0.19)}, 0.08, 0.08, 0.2);
}
TEST(Footprint, OfAFreeAreaIsAsGiven) { expect_footprint(FreeArea{{}, Metres(0.2), Metres(0.5), Metres(0.9)}, 0.5, 0.2, 0.9); }

}  // namespace
}  // namespace coatday::piece
