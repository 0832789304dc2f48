#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "shop/shop.h"

namespace coatday::shop {
namespace {

DryingPlace place(PlaceKind kind, std::optional<double> length, std::optional<double> width = {}) {
  DryingPlace made;
  made.kind = kind;
  if (length) made.length = Metres(*length);
  if (width) made.width = Metres(*width);
  return made;
}

TEST(Fits, CountsAGrid) { EXPECT_EQ(fits(place(PlaceKind::rack, 1.2, 0.6), Metres(0.4), Metres(0.3)), 6); }

TEST(Fits, TurnsTheItemWhenThatHoldsMore) {
  EXPECT_EQ(fits(place(PlaceKind::rack, 1.2, 0.5), Metres(0.5), Metres(0.2)), 6);  // 2 x 2 along, 6 x 1 across
  EXPECT_EQ(fits(place(PlaceKind::points, 0.5, 1.2), Metres(1.1), Metres(0.4)), 1);
}

TEST(Fits, NothingThatIsTooBig) {
  EXPECT_EQ(fits(place(PlaceKind::rack, 1.2, 0.6), Metres(1.3), Metres(0.3)), 0);
  EXPECT_EQ(fits(place(PlaceKind::rack, 1.2, 0.6), Metres(0.7), Metres(0.7)), 0);
}

TEST(Fits, AnExactFitDespiteRounding) { EXPECT_EQ(fits(place(PlaceKind::floor, 0.3, 0.7), Metres(0.1), Metres(0.1)), 21); }

TEST(Fits, OneOfAnythingWhereNoSizeIsGiven) {
  EXPECT_EQ(fits(place(PlaceKind::floor, {}), Metres(9), Metres(9)), 1);
  EXPECT_EQ(fits(place(PlaceKind::hooks, {}), Metres(9), Metres(9)), 1);
}

TEST(Fits, OnHooksByLengthAlone) {
  EXPECT_EQ(fits(place(PlaceKind::hooks, 1.8, 0.1), Metres(1.8), Metres(0.9)), 1);
  EXPECT_EQ(fits(place(PlaceKind::hooks, 1.8), Metres(0.1), Metres(0.1)), 1);
  EXPECT_EQ(fits(place(PlaceKind::hooks, 1.8), Metres(0.5), Metres(1.9)), 0);
}

RC_GTEST_PROP(Fits, NeverMoreThanTheAreaHolds, ()) {
  const auto size = rc::gen::map(rc::gen::inRange(1, 3000), [](int mm) { return Metres(mm * 0.001); });
  const Metres l = *size, w = *size;
  const DryingPlace rack = place(PlaceKind::rack, (*size).value(), (*size).value());
  const int count = fits(rack, l, w);
  RC_ASSERT(count * (l * w).value() <= (*rack.length * *rack.width).value() * (1 + 1e-9));
  RC_ASSERT(count == fits(rack, w, l));
}

TEST(PlaceKind, HasItsWord) {
  EXPECT_EQ(word(PlaceKind::points), "points");
  EXPECT_EQ(word(PlaceKind::hooks), "hooks");
  EXPECT_EQ(word(PlaceKind::rack), "rack");
  EXPECT_EQ(word(PlaceKind::floor), "floor");
}

}  // namespace
}  // namespace coatday::shop
