// What holds for every shape.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

#include "tests/piece/look_up.h"

namespace coatday::piece {
namespace {

/// One of each, sizes in a unit of `k` metres.
std::vector<Shape> all_shapes(double k) {
  const auto m = [k](double size) { return Metres(size * k); };
  const auto area = [k](double size) { return SquareMetres(size * k * k); };
  const std::vector<ProfilePoint> profile{{m(0), m(0.05)}, {m(0.1), m(0.03)}, {m(0.7), m(0.04)}};
  const FreeFace carved{"carved", area(0.3), "back", false, true}, back{"back", area(0.2), "carved", false, false};
  return {Board{m(1.7), m(0.9), m(0.04)},
          RoundTop{m(1.1), m(0.03)},
          TaperedLeg{m(0.7), m(0.05), m(0.03)},
          TurnedLeg{profile},
          RoundTube{m(0.8), m(0.025), true},
          RectTube{m(0.8), m(0.05), m(0.025), true},
          Case{m(0.8), m(0.5), m(0.3), m(0.02)},
          Door{m(0.4), m(0.5), m(0.02), m(0.06), m(0.006)},
          Bowl{m(0.3), m(0.1), m(0.01)},
          Vessel{profile, m(0.004), m(0.5)},
          FreeArea{{carved, back}, m(0.5), m(0.3), m(0.02)}};
}

RC_GTEST_PROP(EveryShape, LengthsTimesKMakeAreasTimesKSquared, ()) {
  const double k = *rc::gen::inRange(1, 5000) * 0.01;
  const auto small = all_shapes(1), large = all_shapes(k);
  for (std::size_t i = 0; i < small.size(); ++i) {
    const auto before = faces_of(small[i]), after = faces_of(large[i]);
    RC_ASSERT(before.size() == after.size());
    for (std::size_t f = 0; f < before.size(); ++f) RC_ASSERT(std::abs(after[f].area / (before[f].area * k * k) - 1) < 1e-9);
  }
}

TEST(EveryShape, NamesItsFacesOnce) {
  for (const Shape& shape : all_shapes(1)) {
    std::set<std::string> names;
    for (const Face& face : faces_of(shape)) EXPECT_TRUE(names.insert(face.name).second) << shape_word(shape) << ' ' << face.name;
    EXPECT_FALSE(names.empty());
  }
}

TEST(EveryShape, HasOppositesThatNameEachOther) {
  for (const Shape& shape : all_shapes(1)) {
    const auto all = faces_of(shape);
    for (const Face& face : all) {
      if (!face.opposite) continue;
      EXPECT_EQ(testing::face_named(all, *face.opposite).opposite, face.name) << shape_word(shape);
      EXPECT_NE(face.opposite, face.name);
    }
  }
}

TEST(EveryShape, HasSomethingToCoat) {
  for (const Shape& shape : all_shapes(1)) {
    for (const Face& face : faces_of(shape)) EXPECT_GT(face.area.value(), 0) << shape_word(shape) << ' ' << face.name;
  }
}

TEST(EveryShape, LiesLongestSideFirst) {
  for (const Shape& shape : all_shapes(1)) {
    const Footprint lies = footprint(shape);
    EXPECT_GE(lies.length, lies.width) << shape_word(shape);
    EXPECT_GT(lies.width, Metres(0)) << shape_word(shape);
    EXPECT_GT(lies.height, Metres(0)) << shape_word(shape);
  }
}

TEST(EveryShape, HasItsOwnWord) {
  std::vector<std::string> words;
  for (const Shape& shape : all_shapes(1)) words.emplace_back(shape_word(shape));
  const std::vector<std::string> expected{"board", "round top", "tapered leg", "turned leg", "round tube", "rect tube",
                                          "case",  "door",      "bowl",        "vessel",     "free"};
  EXPECT_EQ(words, expected);
}

}  // namespace
}  // namespace coatday::piece
