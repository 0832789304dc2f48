// What the room makes of the clocks beside its air: ratios, all of them judgement.
#include "finish/pace.h"

#include <gtest/gtest.h>

#include "finish/times.h"
#include "tests/finish/samples.h"

namespace coatday::finish {
namespace {

TEST(Pace, AClosedRoomHalvesWhatTakesUpOxygen) {
  EXPECT_EQ(pace(Mechanism::oxidative, true, 1), (Pace{0.5, 0.5}));
  EXPECT_EQ(pace(Mechanism::white_spirit, true, 1), (Pace{1, 0.5}));
  EXPECT_EQ(pace(Mechanism::water, true, 1), Pace{});
  EXPECT_EQ(pace(Mechanism::epoxy, true, 2), Pace{});
}

TEST(Pace, MovingAirTakesOffWhatEvaporatesUpToTwiceAsFast) {
  EXPECT_EQ(pace(Mechanism::water, false, 1.5), (Pace{1.5, 1}));
  EXPECT_EQ(pace(Mechanism::lacquer_thinner, false, 5), (Pace{2, 1}));
  EXPECT_EQ(pace(Mechanism::oxidative, false, 2), Pace{});
}

TEST(Pace, MultipliesTheRateButEndsNoWindowLater) {
  const Product open = test::product(Mechanism::oxidative);
  Product closed = open;
  closed.pace = pace(closed.mechanism, true, 1);
  const StageTimes usual = times_in(open, test::air(18, 55)), slow = times_in(closed, test::air(18, 55));
  for (std::size_t s = 0; s < stage_count; ++s) {
    const double times = static_cast<Stage>(s) == Stage::recoat_close ? 1 : 2;
    EXPECT_NEAR(slow.times.values[s]->nominal / usual.times.values[s]->nominal, times, 1e-12);
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
