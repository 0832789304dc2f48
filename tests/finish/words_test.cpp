#include "finish/words.h"

#include <gtest/gtest.h>

#include <set>

#include "finish/catalogue.h"

namespace coatday::finish {
namespace {

template <class Enum>
class Words : public testing::Test {};
using Enums = testing::Types<Base, Role, Mechanism, Stage, Method, FlashClass, Hazard, StepKind, Verdict>;
TYPED_TEST_SUITE(Words, Enums);

TYPED_TEST(Words, EachValueHasOneOfItsOwn) {
  const auto all = words<TypeParam>();
  EXPECT_EQ(std::set<std::string_view>(all.begin(), all.end()).size(), all.size());
  for (std::size_t i = 0; i < all.size(); ++i) EXPECT_EQ(word(static_cast<TypeParam>(i)), all[i]);
}

TYPED_TEST(Words, AreLowerCaseWithHyphensOrSpaces) {
  for (const std::string_view w : words<TypeParam>()) {
    ASSERT_FALSE(w.empty());
    EXPECT_EQ(w.find_first_not_of("abcdefghijklmnopqrstuvwxyz- 0123456789"), std::string_view::npos) << w;
  }
}

TEST(Words, StandInFilesAsTheirAuthorsWriteThem) {
  EXPECT_EQ(word(Base::white_spirit), "white-spirit");
  EXPECT_EQ(word(Mechanism::polyurethane_two_part), "polyurethane-two-part");
  EXPECT_EQ(word(Method::air_assisted_airless_spray), "air-assisted-airless-spray");
  EXPECT_EQ(word(Stage::tack_free), "tack free");
  EXPECT_EQ(word(Stage::recoat_close), "recoat closes");
  EXPECT_EQ(word(Stage::full_cure), "full cure");
  EXPECT_EQ(word(FlashClass::category_3), "category-3");
  EXPECT_EQ(word(Hazard::oily_rags), "oily-rags");
  EXPECT_EQ(word(Role::grain_raiser), "grain-raiser");
  EXPECT_EQ(word(StepKind::prepare), "prepare");
  EXPECT_EQ(word(Verdict::longer_wait), "longer wait");
  EXPECT_EQ(word(Law::Kind::vapour_deficit), "vapour deficit");
}

TEST(Words, SpraysAreTheMethodsThatMakeMist) {
  for (const Method m : {Method::brush, Method::pad, Method::wipe, Method::roller, Method::pour}) EXPECT_FALSE(is_spray(m)) << word(m);
  for (const Method m : {Method::aerosol, Method::hvlp_spray, Method::air_spray, Method::airless_spray, Method::air_assisted_airless_spray})
    EXPECT_TRUE(is_spray(m)) << word(m);
}

}  // namespace
}  // namespace coatday::finish
