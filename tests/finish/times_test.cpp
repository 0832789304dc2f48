#include "finish/times.h"

#include <gtest/gtest.h>

#include "tests/finish/samples.h"

namespace coatday::finish {
namespace {

using test::air;

TEST(TimesIn, EqualTheRecordInItsOwnAir) {
  const Product p = test::product(Mechanism::polyurethane_two_part);
  const StageTimes at = times_in(p, reference_air);
  for (std::size_t s = 0; s < stage_count; ++s) {
    const double hours = p.reference().hours.values[s]->count();
    EXPECT_DOUBLE_EQ(at.times.values[s]->expected.count(), hours);
    EXPECT_DOUBLE_EQ(at.times.values[s]->slow.count(), hours * 1.4);
    EXPECT_DOUBLE_EQ(at.times.values[s]->fast.count(), hours / 1.4);
  }
  EXPECT_EQ(at.may_not_go_on, std::nullopt);
}

TEST(TimesIn, FollowTheLawToNineDigits) {
  const Product p = test::product(Mechanism::water);
  const climate::Air shop = air(18, 65);
  const double dried = p.reference().hours[Stage::recoat]->count() / rate(*p.law(Clock::drying), shop, reference_air);
  const double cured =
      (*p.reference().hours[Stage::pack] - *p.reference().hours[Stage::recoat]).count() / rate(*p.law(Clock::cure), shop, reference_air);
  const StageTimes at = times_in(p, shop);
  EXPECT_NEAR(at.times[Stage::recoat]->expected.count(), dried, 1e-9);
  EXPECT_NEAR(at.times[Stage::pack]->expected.count(), dried + cured, 1e-9);
}

TEST(TimesIn, AreWiderOutsideUsualAir) {
  const StageTimes at = times_in(test::product(Mechanism::oxidative), air(12, 50));
  EXPECT_DOUBLE_EQ(at.times[Stage::recoat]->slow / at.times[Stage::recoat]->expected, 2);
}

TEST(TimesIn, RefuseStagesBeyondTheirLaw) {
  const StageTimes at = times_in(test::product(Mechanism::water), air(12, 50));
  EXPECT_TRUE(at.times[Stage::recoat]);
  EXPECT_FALSE(at.times[Stage::full_cure]);
  EXPECT_EQ(at.refused[Stage::full_cure].value_or(""), "12 °C is below the law's range, 15 °C to 30 °C");
  EXPECT_TRUE(at.any());
  EXPECT_FALSE(times_in(test::product(Mechanism::water), air(5, 50)).any());
}

TEST(TimesIn, TellThatTheCoatMayNotGoOn) {
  Product p = test::product(Mechanism::oxidative);
  p.limits.hold = Hours(24);
  p.limits.hold_above = Celsius(13);
  EXPECT_EQ(times_in(p, air(12, 50)).may_not_go_on.value_or(""), "12 °C within 1 day of the coat is below its limit of 13 °C");
  EXPECT_EQ(times_in(p, air(13, 50)).may_not_go_on, std::nullopt);
}

TEST(TimesIn, HaveNoCureInShopAirForWhatIsCuredByHeat) {
  const StageTimes at = times_in(test::product(Mechanism::heat_cured), air(20, 50));
  EXPECT_TRUE(at.times[Stage::handle]);
  EXPECT_FALSE(at.times[Stage::full_cure] || at.refused[Stage::full_cure]);
}

}  // namespace
}  // namespace coatday::finish
