// The checker's clock adds up row by row; the planner's looks up a running sum. Two ways, one answer, in air that never stays the same.

#include "checker/drying_clock.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "finish/clock.h"
#include "tests/checker/small_plan.h"

namespace coatday::checker::test {
namespace {

using checker::Clocks;
using checker::Estimate;
using finish::Mechanism;
using finish::Stage;

/// Days from -3 to 37 °C and 30 to 90 % RH, each unlike the one before.
class Weather final : public climate::AirSource {
 public:
  [[nodiscard]] climate::Air at(Instant t) const override {
    const auto hours = std::chrono::duration_cast<std::chrono::hours>(t.time_since_epoch()).count();
    return {Celsius(17 + 20 * std::sin(static_cast<double>(hours) / 3.8)),
            RelativeHumidity(0.6 + 0.3 * std::cos(static_cast<double>(hours) / 11))};
  }
  [[nodiscard]] std::string describe(Units) const override { return "weather"; }
};

finish::Product product(Mechanism mechanism) {
  finish::Product p;
  p.id = "made-up";
  p.mechanism = mechanism;
  finish::StageHours hours;
  hours.values = {Hours(0.5), Hours(1), Hours(2), Hours(3), Hours(24), Hours(48), Hours(72), Hours(168)};
  p.rows = {{finish::reference_air, hours}};
  if (const auto law = p.law(Stage::recoat)) {  // a stage with a law of its own
    finish::Fit fit{*law, 0};
    fit.law.activation = KilojoulesPerMole(70);
    fit.law.wet_bulb_share = 0.8;
    p.fits[Stage::recoat] = fit;
  }
  return p;
}

const climate::AirSeries& weather() {
  static const climate::AirSeries air(Weather(), at(0, 0), at(60, 0));
  return air;
}

RC_GTEST_PROP(CheckClock, AgreesWithTheLookUp, ()) {
  const auto mechanism = static_cast<Mechanism>(*rc::gen::inRange(0, static_cast<int>(Mechanism::heat_cured) + 1));
  const auto stage = static_cast<Stage>(*rc::gen::inRange(0, static_cast<int>(finish::stage_count)));
  const Instant applied = at(0, 0) + std::chrono::seconds(*rc::gen::inRange(0, 40 * 86400));
  using Sides = std::pair<checker::Estimate, finish::Estimate>;
  const auto [own, theirs] =
      *rc::gen::element(Sides{checker::Estimate::expected, finish::Estimate::expected},
                        Sides{checker::Estimate::slow, finish::Estimate::slow}, Sides{checker::Estimate::fast, finish::Estimate::fast});
  const finish::Product p = product(mechanism);
  const checker::Clocks clocks(weather());
  const finish::CureClock other(p, weather(), theirs);
  const double drying = *rc::gen::element(0.5, 0.8, 1.0, 1.3, 2.0);  // of a film of another thickness
  const auto a = clocks.reached(p, stage, applied, own, drying);
  const auto b = other.reached(stage, applied, drying);
  RC_ASSERT(a.has_value() == b.has_value());
  if (a) RC_ASSERT(std::chrono::abs(*a - *b) <= std::chrono::seconds(1));
}

TEST(CheckClock, ShowsElapsedTimeInReferenceAir) {
  const climate::AirSeries air = reference_air(at(0, 0), at(9, 0));
  const finish::Product p = product(Mechanism::water);
  const checker::Clocks clocks(air);
  EXPECT_EQ(clocks.reached(p, Stage::recoat, at(0, 8, 7), checker::Estimate::expected, 1), at(0, 11, 7));
  EXPECT_EQ(clocks.reached(p, Stage::pack, at(0, 8, 7), checker::Estimate::expected, 1), at(2, 8, 7));
  EXPECT_EQ(clocks.dried(p, Hours(10), at(0, 8), checker::Estimate::slow), at(0, 22));
  EXPECT_EQ(clocks.reached(p, Stage::recoat_close, at(0, 8), checker::Estimate::expected, 1), at(1, 8));
  EXPECT_EQ(clocks.dried(p, Hours(14), at(0, 8), checker::Estimate::fast), at(0, 18));
}

TEST(CheckClock, KnowsNothingOutsideItsAir) {
  const climate::AirSeries air = reference_air(at(0, 0), at(2, 0));
  const finish::Product p = product(Mechanism::water);
  const checker::Clocks clocks(air);
  EXPECT_EQ(clocks.reached(p, Stage::full_cure, at(0, 8), checker::Estimate::expected, 1), std::nullopt);
  EXPECT_EQ(clocks.reached(p, Stage::tack_free, at(-1, 8), checker::Estimate::expected, 1), std::nullopt);
  EXPECT_EQ(clocks.reached(p, Stage::tack_free, at(2, 0), checker::Estimate::expected, 1), std::nullopt);
}

TEST(CheckClock, HasNoCureInShopAirForWhatIsCuredByHeat) {
  const climate::AirSeries air = reference_air(at(0, 0), at(20, 0));
  const finish::Product p = product(Mechanism::heat_cured);
  const checker::Clocks clocks(air);
  EXPECT_TRUE(clocks.reached(p, Stage::handle, at(0, 8), checker::Estimate::expected, 1));
  EXPECT_EQ(clocks.reached(p, Stage::full_cure, at(0, 8), checker::Estimate::expected, 1), std::nullopt);
}

}  // namespace
}  // namespace coatday::checker::test
