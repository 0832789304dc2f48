#include "piece/heat.h"

#include <gtest/gtest.h>

namespace coatday::piece {
namespace {

double millimetres(const Shape& shape) { return 1000 * section(shape).depth.value(); }

TEST(Heat, DepthIsTheVolumeBehindTheSurface) {
  EXPECT_DOUBLE_EQ(millimetres(Board{Metres(1), Metres(0.3), Metres(0.022)}), 11);
  EXPECT_DOUBLE_EQ(millimetres(RoundTop{Metres(1), Metres(0.03)}), 15);
  EXPECT_DOUBLE_EQ(millimetres(TaperedLeg{Metres(0.7), Metres(0.06), Metres(0.03)}), 15);
  EXPECT_DOUBLE_EQ(millimetres(TurnedLeg{{{Metres(0), Metres(0.05)}, {Metres(0.2), Metres(0.06)}, {Metres(0.7), Metres(0.02)}}}), 15);
  EXPECT_DOUBLE_EQ(millimetres(Case{Metres(1), Metres(1), Metres(0.4), Metres(0.018)}), 9);
  EXPECT_DOUBLE_EQ(millimetres(Door{Metres(0.4), Metres(0.6), Metres(0.02), Metres(0.05), Metres(0.005)}), 10);
  EXPECT_DOUBLE_EQ(millimetres(Bowl{Metres(0.3), Metres(0.1), Metres(0.01)}), 5);
}

TEST(Heat, ATubeIsItsWallAndElseSolid) {
  EXPECT_DOUBLE_EQ(millimetres(RoundTube{Metres(1), Metres(0.04), false, Metres(0.002)}), 2);
  EXPECT_DOUBLE_EQ(millimetres(RoundTube{Metres(1), Metres(0.04)}), 10);
  EXPECT_DOUBLE_EQ(millimetres(RectTube{Metres(1), Metres(0.04), Metres(0.04), false, Metres(0.003)}), 3);
  EXPECT_DOUBLE_EQ(millimetres(RectTube{Metres(1), Metres(0.04), Metres(0.04)}), 10);
  EXPECT_DOUBLE_EQ(millimetres(FreeArea{{}, Metres(0.7), Metres(0.6), Metres(0.05), {}}), 25);
  EXPECT_DOUBLE_EQ(millimetres(FreeArea{{}, Metres(0.7), Metres(0.6), Metres(0.05), Metres(0.002)}), 2);
}

/// 22 mm of oak: 762 kg/m3 x 1619 J/(kg K) x 11 mm x 0.13 m2K/W = 1764 s. 25 mm of steel: 7850 x 490 x 12.5 mm x 0.13 = 6250 s.
TEST(Heat, SteelLagsMoreThanWood) {
  Part part;
  part.shape = Board{Metres(1), Metres(0.3), Metres(0.022)};
  part.species = "oak-white";
  EXPECT_EQ(time_constant(part), Minutes(29));
  part.shape = Board{Metres(1), Metres(0.3), Metres(0.003)};
  EXPECT_EQ(time_constant(part), Minutes(4));
  part.species.reset();
  part.shape = Board{Metres(1), Metres(0.3), Metres(0.025)};
  EXPECT_EQ(time_constant(part), Minutes(104));
}

}  // namespace
}  // namespace coatday::piece
