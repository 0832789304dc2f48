#include "piece/mass.h"

#include <gtest/gtest.h>

#include <numbers>

namespace coatday::piece {
namespace {

Part part(Shape shape, bool wood = true) {
  Part p;
  p.shape = std::move(shape);
  if (wood) p.species = "oak-white";
  return p;
}
double litres(const Shape& shape) { return volume(part(shape)).value(); }

/// The volumes of textbooks on solids, in decimetres.
TEST(Mass, VolumesAreThoseOfTheSolids) {
  EXPECT_NEAR(litres(Board{Metres(1), Metres(0.5), Metres(0.02)}), 10 * 5 * 0.2, 1e-9);
  EXPECT_NEAR(litres(RoundTop{Metres(1), Metres(0.03)}), std::numbers::pi * 25 * 0.3, 1e-9);
  EXPECT_NEAR(litres(TaperedLeg{Metres(0.6), Metres(0.04), Metres(0.02)}), 6.0 / 3 * (0.16 + 0.08 + 0.04), 1e-9);
  EXPECT_NEAR(litres(TurnedLeg{{{Metres(0), Metres(0.04)}, {Metres(0.6), Metres(0.04)}}}), std::numbers::pi * 0.04 * 6, 1e-9);
  EXPECT_NEAR(litres(RoundTube{Metres(1), Metres(0.04), false, Metres(0.002)}), std::numbers::pi * (0.04 - 0.18 * 0.18) * 10, 1e-9);
  EXPECT_NEAR(litres(RectTube{Metres(1), Metres(0.06), Metres(0.04), false, Metres(0.002)}), (0.6 * 0.4 - 0.56 * 0.36) * 10, 1e-9);
  EXPECT_NEAR(litres(Door{Metres(0.4), Metres(0.6), Metres(0.02), Metres(0.05), Metres(0.005)}), 4 * 6 * 0.2 - 3 * 5 * 0.1, 1e-9);
  EXPECT_NEAR(litres(Case{Metres(1), Metres(0.8), Metres(0.4), Metres(0.02)}), (2 * 8 * 4 + 2 * 10 * 4 + 10 * 8) * 0.2, 1e-9);
}

/// 4 x 8 ft of 3/4 in medium-density fibreboard weighs about 44 kg (97 lb, trade tables, from memory): a dense hardwood is as heavy.
TEST(Mass, ASheetIsTooHeavyForOne) {
  EXPECT_NEAR(mass(part(Board{Metres(2.44), Metres(1.22), Metres(0.019)})).value(), 44, 2);
  EXPECT_NEAR(mass(part(Board{Metres(1), Metres(1), Metres(0.001)}, false)).value(), 7.85, 1e-9);
}

}  // namespace
}  // namespace coatday::piece
