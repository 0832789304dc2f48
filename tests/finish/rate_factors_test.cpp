// What the room makes of the clocks beside its air: ratios, all of them judgement.
#include "finish/rate_factors.h"

#include <gtest/gtest.h>

#include "finish/times.h"
#include "tests/finish/samples.h"

namespace coatday::finish {
namespace {

TEST(RateFactors, AClosedRoomHalvesWhatTakesUpOxygen) {
  EXPECT_EQ(rate_factors(Mechanism::oxidative, true, 1), (RateFactors{0.5, 0.5}));
  EXPECT_EQ(rate_factors(Mechanism::white_spirit, true, 1), (RateFactors{1, 0.5}));
  EXPECT_EQ(rate_factors(Mechanism::water, true, 1), RateFactors{});
  EXPECT_EQ(rate_factors(Mechanism::epoxy, true, 2), RateFactors{});
}

TEST(RateFactors, MovingAirTakesOffWhatEvaporatesUpToTwiceAsFast) {
  EXPECT_EQ(rate_factors(Mechanism::water, false, 1.5), (RateFactors{1.5, 1}));
  EXPECT_EQ(rate_factors(Mechanism::lacquer_thinner, false, 5), (RateFactors{2, 1}));
  EXPECT_EQ(rate_factors(Mechanism::oxidative, false, 2), RateFactors{});
}

TEST(RateFactors, MultipliesTheRateButEndsNoWindowLater) {
  const Product open = test::product(Mechanism::oxidative);
  Product closed = open;
  closed.rate_factors = rate_factors(closed.mechanism, true, 1);
  const StageTimes usual = times_in(open, test::air(18, 55)), slow = times_in(closed, test::air(18, 55));
  for (std::size_t s = 0; s < stage_count; ++s) {
    const double times = static_cast<Stage>(s) == Stage::recoat_close ? 1 : 2;
    EXPECT_NEAR(slow.times.values[s]->expected / usual.times.values[s]->expected, times, 1e-12);
  }
}

TEST(LawRanges, AreWithinTheFactorWhereTheAirIsNearTheRecords) {
  const StageTimes at = times_in(test::product(Mechanism::oxidative), test::air(15, 50));
  // 20 kJ/mol more over 8 K: exp(20 / R (1 / 288.15 - 1 / 296.15)).
  EXPECT_NEAR(at.times[Stage::recoat]->by_laws, 1.2530, 0.001);
  EXPECT_EQ(times_in(test::product(Mechanism::oxidative), reference_air).times[Stage::recoat]->by_laws, 1);
}

}  // namespace
}  // namespace coatday::finish
