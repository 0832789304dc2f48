#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "shop/packing.h"

namespace coatday::shop {
namespace {

DryingPlace place(PlaceKind kind, std::optional<double> length, std::optional<double> width = {}) {
  DryingPlace made;
  made.kind = kind;
  if (length) made.length = Metres(*length);
  if (width) made.width = Metres(*width);
  return made;
}

std::optional<std::size_t> places(const DryingPlace& place, const std::vector<Item>& items, Metres gap = {}) {
  const auto packing = pack(place, items, gap);
  if (!packing) return std::nullopt;
  return packing->places.size();
}

DryingPlace racks(int count, double length, double width) {
  DryingPlace made = place(PlaceKind::rack, length, width);
  made.count = count;
  return made;
}

TEST(Pack, AGrid) {
  EXPECT_EQ(places(racks(2, 1.2, 0.6), {{Metres(0.4), Metres(0.3), 6}}), 1U);
  EXPECT_EQ(places(racks(2, 1.2, 0.6), {{Metres(0.4), Metres(0.3), 7}}), 2U);
}

TEST(Pack, TurnsTheItemWhenThatHoldsMore) {
  EXPECT_EQ(places(racks(2, 1.2, 0.5), {{Metres(0.5), Metres(0.2), 6}}), 1U);  // 2 x 2 along, 6 x 1 across
  EXPECT_EQ(places(racks(2, 0.5, 1.2), {{Metres(1.1), Metres(0.4), 1}}), 1U);
}

TEST(Pack, NothingThatIsTooBig) {
  EXPECT_EQ(places(racks(9, 1.2, 0.6), {{Metres(1.3), Metres(0.3), 1}}), std::nullopt);
  EXPECT_EQ(places(racks(9, 1.2, 0.6), {{Metres(0.7), Metres(0.7), 1}}), std::nullopt);
}

TEST(Pack, NoMoreThanThePlacesHold) {
  EXPECT_EQ(places(racks(2, 1, 1), {{Metres(0.9), Metres(0.9), 2}}), 2U);
  EXPECT_EQ(places(racks(2, 1, 1), {{Metres(0.9), Metres(0.9), 3}}), std::nullopt);
}

TEST(Pack, AnExactFitDespiteRounding) { EXPECT_EQ(places(racks(1, 0.3, 0.7), {{Metres(0.1), Metres(0.1), 21}}), 1U); }

TEST(Pack, SmallThingsBesideLargeOnes) {
  const auto beside = pack(racks(1, 2.5, 1), {{Metres(1.6), Metres(0.7)}, {Metres(1.5), Metres(0.3)}}, Metres(0));
  ASSERT_TRUE(beside);
  EXPECT_DOUBLE_EQ(beside->used.value(), 1.6);
  EXPECT_EQ(places(racks(1, 2.5, 1), {{Metres(1.6), Metres(0.7)}, {Metres(0.33), Metres(0.05), 8}}), 1U);
}

TEST(Pack, KeepsAGap) {
  EXPECT_EQ(places(racks(1, 1, 0.2), {{Metres(0.5), Metres(0.2), 2}}), 1U);
  EXPECT_EQ(places(racks(1, 1, 0.2), {{Metres(0.5), Metres(0.2), 2}}, Metres(0.02)), std::nullopt);
  EXPECT_EQ(places(racks(1, 1.02, 0.2), {{Metres(0.5), Metres(0.2), 2}}, Metres(0.02)), 1U);
}

TEST(Pack, OneOfAnythingWhereNoSizeIsGiven) {
  for (const PlaceKind kind : {PlaceKind::floor, PlaceKind::hooks}) {
    EXPECT_EQ(places(place(kind, {}), {{Metres(9), Metres(9), 1}}), 1U);
    EXPECT_EQ(places(place(kind, {}), {{Metres(9), Metres(9), 2}}), std::nullopt);
  }
  EXPECT_EQ(places(place(PlaceKind::points, 2), {{Metres(1), Metres(9)}, {Metres(1), Metres(1)}}), 1U);
}

TEST(Pack, OnHooksByLengthAlone) {
  EXPECT_EQ(places(place(PlaceKind::hooks, 1.8, 0.1), {{Metres(1.8), Metres(0.9), 1}}), 1U);
  EXPECT_EQ(places(place(PlaceKind::hooks, 1.8), {{Metres(0.1), Metres(0.1), 2}}), std::nullopt);
  EXPECT_EQ(places(place(PlaceKind::hooks, 1.8), {{Metres(0.5), Metres(1.9), 1}}), std::nullopt);
}

struct Rectangle {
  double x0, y0, x1, y1;
};

RC_GTEST_PROP(Pack, LaysEverythingOnceWithinAndApart, ()) {
  const auto size = rc::gen::map(rc::gen::inRange(1, 1500), [](int mm) { return Metres(mm * 0.001); });
  const DryingPlace rack = racks(*rc::gen::inRange(1, 6), (*size).value(), (*size).value());
  const Metres gap(*rc::gen::inRange(0, 60) * 0.001);
  std::vector<Item> items;
  for (int n = *rc::gen::inRange(1, 5); n > 0; --n) items.push_back({*size, *size, *rc::gen::inRange(1, 6)});
  const auto packing = pack(rack, items, gap);
  RC_PRE(packing.has_value());
  std::vector<int> laid(items.size());
  for (const auto& rows : packing->places) {
    std::vector<Rectangle> seen;
    for (const Laid& row : rows) {
      laid[row.item] += row.count;
      for (int n = 0; n < row.count; ++n) {
        const double x = row.x.value(), y = (row.y + row.across * n).value();
        const Rectangle next{x, y, x + row.along.value(), y + row.across.value()};
        RC_ASSERT(next.x1 <= (*rack.length + gap).value() + 1e-6);
        RC_ASSERT(next.y1 <= (*rack.width + gap).value() + 1e-6);
        for (const Rectangle& r : seen) {
          RC_ASSERT(next.x1 <= r.x0 + 1e-6 || r.x1 <= next.x0 + 1e-6 || next.y1 <= r.y0 + 1e-6 || r.y1 <= next.y0 + 1e-6);
        }
        seen.push_back(next);
      }
    }
  }
  for (std::size_t i = 0; i < items.size(); ++i) RC_ASSERT(laid[i] == items[i].count);
}

TEST(PlaceKind, HasItsWord) {
  EXPECT_EQ(word(PlaceKind::points), "points");
  EXPECT_EQ(word(PlaceKind::hooks), "hooks");
  EXPECT_EQ(word(PlaceKind::rack), "rack");
  EXPECT_EQ(word(PlaceKind::floor), "floor");
}

}  // namespace
}  // namespace coatday::shop
