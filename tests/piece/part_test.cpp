#include "piece/piece.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace coatday::piece {
namespace {

Part shelf() {
  Part part;
  part.id = part.name = "shelf";
  part.shape = Board{Metres(1), Metres(0.3), Metres(0.02)};
  part.species = "oak-red";
  return part;
}

PartFace face_of(const Part& part, const std::string& name) {
  const auto all = faces_of(part);
  return *std::find_if(all.begin(), all.end(), [&](const PartFace& f) { return f.face.name == name; });
}

TEST(PartFaces, MasksOfAFaceAddUp) {
  Part part = shelf();
  part.masks = {{"face", SquareMetres(0.04), "hidden", {}}, {"face", SquareMetres(0.06), "glue", {}}};
  EXPECT_NEAR(face_of(part, "face").coated.value(), 0.2, 1e-12);
  EXPECT_NEAR(face_of(part, "face").face.area.value(), 0.3, 1e-12);
  EXPECT_NEAR(face_of(part, "underside").coated.value(), 0.3, 1e-12);
}

TEST(PartFaces, AMaskLargerThanItsFaceLeavesNothing) {
  Part part = shelf();
  part.masks = {{"left end", SquareMetres(1), "glue face", {}}};
  EXPECT_EQ(face_of(part, "left end").coated, SquareMetres(0));
}

TEST(PartFaces, AMaskOfAnUnknownFaceChangesNothing) {
  Part part = shelf();
  part.masks = {{"lid", SquareMetres(0.1), "glue face", {}}};
  for (const PartFace& f : faces_of(part)) EXPECT_EQ(f.coated, f.face.area) << f.face.name;
}

TEST(PartFaces, CarryTheirException) {
  Part part = shelf();
  part.exceptions = {{"left end", 1, "hidden in the upright", {}}};
  ASSERT_TRUE(face_of(part, "left end").exception.has_value());
  EXPECT_EQ(face_of(part, "left end").exception->reason, "hidden in the upright");
  EXPECT_FALSE(face_of(part, "right end").exception.has_value());
}

TEST(PartFaces, OnlyWoodHasEndGrain) {
  Part part = shelf();
  part.shape = RoundTube{Metres(0.8), Metres(0.025), true};
  EXPECT_TRUE(face_of(part, "left end").face.end_grain);
  part.species.reset();
  EXPECT_FALSE(face_of(part, "left end").face.end_grain);
}

TEST(Support, HasItsWord) {
  EXPECT_EQ(word(Support::points), "points");
  EXPECT_EQ(word(Support::hooks), "hooks");
  EXPECT_EQ(word(Support::laid), "laid");
}

}  // namespace
}  // namespace coatday::piece
