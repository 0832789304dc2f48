#include "finish/clock.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/finish/samples.h"

namespace coatday::finish {
namespace {

using namespace std::chrono_literals;
using climate::Air;
using climate::AirSeries;
using test::air;
using test::constant;
using test::monday;
using test::series;

constexpr Air shop = air(18, 55);

void append(std::vector<Air>& rows, const std::vector<Air>& more) { rows.insert(rows.end(), more.begin(), more.end()); }

Instant after(Instant from, double hours) { return from + std::chrono::seconds(static_cast<long>(std::ceil(hours * 3600 - 1e-6))); }

TEST(ClockIntegral, IsHoursTimesRateInConstantAir) {
  const Law law = *default_law(Mechanism::oxidative, Clock::cure);
  const ClockIntegral clock(series(constant(3000, shop)), law, reference_air, Side::slow, Estimate::expected);
  EXPECT_NEAR(clock.between(monday, monday + 3000h).count(), 3000 * rate(law, shop, reference_air), 1e-9);
  EXPECT_NEAR(clock.between(monday + 7min, monday + 2999h + 59s).count(), (2999 - (7 * 60 - 59) / 3600.0) * rate(law, shop, reference_air),
              1e-9);
}

TEST(ClockIntegral, LateSideDividesByTheUncertainty) {
  const Law law = *default_law(Mechanism::oxidative, Clock::cure);
  const ClockIntegral clock(series(constant(10, shop)), law, reference_air, Side::slow, Estimate::slow);
  EXPECT_NEAR(clock.between(monday, monday + 10h).count(), 10 * rate(law, shop, reference_air) / 1.4, 1e-12);
}

// The form of ASTM C1074, equation for the equivalent age: the sum over the history of exp(-Q (1/T - 1/T_r)) dt.
TEST(ClockIntegral, IsTheEquivalentAgeUnderVaryingTemperature) {
  Law law;
  law.activation = KilojoulesPerMole(50);
  std::vector<Air> rows = constant(12, air(10, 50));
  append(rows, constant(6, air(18, 50)));
  append(rows, constant(6, air(24, 50)));
  const ClockIntegral clock(series(rows), law, reference_air, Side::slow, Estimate::expected);

  const auto k = [](double t) { return std::exp(50e3 / 8.31446261815324 * (1 / 296.15 - 1 / (t + 273.15))); };
  const double age = clock.between(monday, monday + 24h).count();
  EXPECT_NEAR(age, 12 * k(10) + 6 * k(18) + 6 * k(24), 1e-9);
  EXPECT_NEAR(age, 15.382, 5e-4);

  // The same age is the same cure, whatever the way there.
  const ClockIntegral steady(series(constant(24, reference_air)), law, reference_air, Side::slow, Estimate::expected);
  EXPECT_EQ(steady.reached(monday, Hours(age)), after(monday, age));
  EXPECT_EQ(clock.reached(monday, Hours(age)), monday + 24h);
}

TEST(ClockIntegral, ReachesAtTheFirstWholeSecond) {
  const Law law = *default_law(Mechanism::epoxy, Clock::cure);
  const ClockIntegral clock(series(constant(100, reference_air)), law, reference_air, Side::slow, Estimate::expected);
  EXPECT_EQ(clock.reached(monday, Hours(2)), monday + 2h);
  EXPECT_EQ(clock.reached(monday + 11s, Hours(0.25)), monday + 15min + 11s);
  EXPECT_EQ(clock.reached(monday, Hours(2.0001)), monday + 2h + 1s);
  EXPECT_EQ(clock.reached(monday + 5s, Hours(0)), monday + 5s);
  EXPECT_EQ(clock.reached(monday + 5s, Hours(-1)), monday + 5s);
}

TEST(ClockIntegral, IsDoneBeforeTheColdNightWhenTheHoursJustSuffice) {
  const Law law = *default_law(Mechanism::epoxy, Clock::cure);
  std::vector<Air> rows = constant(8, reference_air);
  append(rows, constant(16, air(5, 50)));
  append(rows, constant(8, reference_air));
  const ClockIntegral clock(series(rows), law, reference_air, Side::slow, Estimate::expected);
  EXPECT_EQ(clock.reached(monday, Hours(8)), monday + 8h);
  EXPECT_EQ(clock.reached(monday + 6h + 40min, Hours(4.0 / 3)), monday + 8h);
  EXPECT_EQ(clock.reached(monday, Hours(8.5)), monday + 24h + 30min);
}

TEST(ClockIntegral, EndsWithTheAir) {
  const Law law = *default_law(Mechanism::epoxy, Clock::cure);
  const ClockIntegral clock(series(constant(8, reference_air)), law, reference_air, Side::slow, Estimate::expected);
  EXPECT_EQ(clock.reached(monday, Hours(8)), monday + 8h);
  EXPECT_EQ(clock.reached(monday, Hours(8.1)), std::nullopt);
  EXPECT_EQ(clock.reached(monday + 9h, Hours(0)), std::nullopt);
  EXPECT_THROW((void)clock.between(monday, monday + 8h + 1s), std::out_of_range);
  EXPECT_THROW((void)clock.reached(monday - 1s, Hours(1)), std::out_of_range);
  EXPECT_EQ(ClockIntegral({}, law, reference_air, Side::slow, Estimate::expected).reached(monday, Hours(1)), std::nullopt);
}

TEST(CureClock, EqualsTheRecordInItsOwnAir) {
  for (std::size_t m = 0; m < words<Mechanism>().size(); ++m) {
    const Product p = test::product(static_cast<Mechanism>(m));
    const CureClock clock(p, series(constant(48, reference_air)), Estimate::expected);
    for (std::size_t s = 0; s < stage_count; ++s) {
      const auto stage = static_cast<Stage>(s);
      if (!clock.has(stage)) continue;
      EXPECT_EQ(clock.reached(stage, monday), after(monday, p.reference().hours[stage]->count()))
          << word(p.mechanism) << ' ' << word(stage);
    }
  }
}

TEST(CureClock, EqualsTheClosedFormInConstantAir) {
  const Product p = test::product(Mechanism::acid_cured);
  const Law law = *p.law(Clock::cure);
  const CureClock nominal(p, series(constant(96, shop)), Estimate::expected);
  const CureClock late(p, series(constant(96, shop)), Estimate::slow);
  const double slowdown = 1 / rate(law, shop, reference_air);
  EXPECT_EQ(nominal.reached(Stage::recoat, monday + 1h), after(monday + 1h, p.reference().hours[Stage::recoat]->count() * slowdown));
  EXPECT_EQ(late.reached(Stage::full_cure, monday), after(monday, p.reference().hours[Stage::full_cure]->count() * slowdown * 1.4));
}

TEST(CureClock, WaterCuresFromRecoatOn) {
  const Product p = test::product(Mechanism::water);
  const CureClock clock(p, series(constant(96, shop)), Estimate::expected);
  const double recoat = p.reference().hours[Stage::recoat]->count();
  const double full = p.reference().hours[Stage::full_cure]->count();
  const double dried = recoat / rate(*p.law(Clock::drying), shop, reference_air);
  const double cured = (full - recoat) / rate(*p.law(Clock::cure), shop, reference_air);
  const Instant start = after(monday, dried);
  EXPECT_EQ(clock.reached(Stage::recoat, monday), start);
  EXPECT_EQ(clock.reached(Stage::full_cure, monday), after(start, cured));
}

TEST(CureClock, WindowClosesOnTheEarlySide) {
  const Product p = test::product(Mechanism::polyurethane_two_part);
  const Air hot = air(43, 50);
  const CureClock nominal(p, series(constant(48, hot)), Estimate::expected);
  const CureClock early(p, series(constant(48, hot)), Estimate::fast);
  const double k = rate(*p.law(Clock::cure), hot, reference_air, Side::fast);
  const double close = p.reference().hours[Stage::recoat_close]->count() / k;
  EXPECT_EQ(nominal.reached(Stage::recoat_close, monday), after(monday, close));
  EXPECT_EQ(early.reached(Stage::recoat_close, monday), after(monday, close / 2));
  EXPECT_LT(early.reached(Stage::pack, monday), nominal.reached(Stage::pack, monday));
}

TEST(CureClock, WindowOfAWaterFinishClosesOnTheEarlySideOfBothClocks) {
  const Product p = test::product(Mechanism::water);
  const Air dry = air(23, 10);
  const CureClock early(p, series(constant(48, dry)), Estimate::fast);
  const StageHours& hours = p.reference().hours;
  const double dried = hours[Stage::recoat]->count() / rate(*p.law(Clock::drying), dry, reference_air, Side::fast);
  const double cured = (*hours[Stage::recoat_close] - *hours[Stage::recoat]).count();
  EXPECT_EQ(early.reached(Stage::recoat_close, monday), after(after(monday, dried / 2), cured / 2));
}

TEST(CureClock, WindowClosesEarlierInAHotSpell) {
  const Product p = test::product(Mechanism::polyurethane_two_part);
  std::vector<Air> spell = constant(96, reference_air);
  for (std::size_t row = 4; row < 8; ++row) spell[row] = air(38, 50);
  const CureClock mild(p, series(constant(96, reference_air)), Estimate::fast);
  const CureClock hot(p, series(spell), Estimate::fast);
  const double need = p.reference().hours[Stage::recoat_close]->count();
  const double hot_rate = 2 * rate(*p.law(Stage::recoat_close), air(38, 50), reference_air, Side::fast);  // the wider factor
  EXPECT_EQ(mild.reached(Stage::recoat_close, monday), after(monday, need / 1.4));
  EXPECT_EQ(hot.reached(Stage::recoat_close, monday), after(monday + 2h, (need - 2 * 1.4) / hot_rate));
  EXPECT_LT(hot.reached(Stage::recoat_close, monday), mild.reached(Stage::recoat_close, monday));
}

TEST(CureClock, RunsAStageByItsOwnLaw) {
  Product p = test::product(Mechanism::oxidative);
  Law own = *p.law(Clock::drying);
  own.activation = KilojoulesPerMole(80);
  p.fits[Stage::recoat] = Fit{own, 0};
  const CureClock clock(p, series(constant(96, shop)), Estimate::expected);
  const auto hours = [&](Stage stage, const Law& law) { return p.reference().hours[stage]->count() / rate(law, shop, reference_air); };
  EXPECT_EQ(clock.reached(Stage::recoat, monday), after(monday, hours(Stage::recoat, own)));
  EXPECT_EQ(clock.reached(Stage::sand, monday), after(monday, hours(Stage::sand, *p.law(Clock::drying))));
  EXPECT_EQ(clock.dried(Hours(3), monday), after(monday, 3 / rate(*p.law(Clock::drying), shop, reference_air)));
}

TEST(CureClock, HeatCuredPaintNeverCuresInShopAir) {
  const CureClock clock(test::product(Mechanism::heat_cured), series(constant(480, reference_air)), Estimate::expected);
  EXPECT_TRUE(clock.reached(Stage::handle, monday));
  for (const Stage stage : {Stage::recoat_close, Stage::pack, Stage::light_use, Stage::full_cure}) {
    EXPECT_FALSE(clock.has(stage)) << word(stage);
    EXPECT_EQ(clock.reached(stage, monday), std::nullopt) << word(stage);
  }
}

TEST(CureClock, HasOnlyTheStagesOfTheRecord) {
  Product p = test::product(Mechanism::oxidative);
  p.rows.front().hours[Stage::sand].reset();
  const CureClock clock(p, series(constant(48, reference_air)), Estimate::expected);
  EXPECT_FALSE(clock.has(Stage::sand));
  EXPECT_EQ(clock.reached(Stage::sand, monday), std::nullopt);
  EXPECT_TRUE(clock.has(Stage::recoat));
}

TEST(CureClock, WaitsOfARuleRunOnTheDryingClock) {
  const Product p = test::product(Mechanism::white_spirit);
  const CureClock clock(p, series(constant(96, shop)), Estimate::expected);
  EXPECT_EQ(clock.dried(Hours(24), monday), after(monday, 24 / rate(*p.law(Clock::drying), shop, reference_air)));
}

TEST(Product, RecordedLawWins) {
  Product p = test::product(Mechanism::oxidative);
  EXPECT_EQ(p.law(Clock::cure)->activation, KilojoulesPerMole(50));
  p.cure_law = p.law(Clock::cure);
  p.cure_law->activation = KilojoulesPerMole(61);
  EXPECT_EQ(p.law(Clock::cure)->activation, KilojoulesPerMole(61));
  EXPECT_EQ(p.law(Clock::drying)->activation, KilojoulesPerMole(50));
}

// UFGS 09971 par. 3.7.1.3 and MO-124 know induction as a time that falls with warmth; the rate is the cure's.
TEST(Product, InductionIsLongerInColdAir) {
  Product p = test::product(Mechanism::epoxy);
  EXPECT_EQ(induction(p, air(15, 50)), Hours(0));
  p.two_part = TwoPart{1, 1, Hours(0.5)};
  const Law law = *p.law(Clock::cure);
  EXPECT_DOUBLE_EQ(induction(p, reference_air).count(), 0.5);
  EXPECT_DOUBLE_EQ(induction(p, air(15, 50)).count(), 0.5 / rate(law, air(15, 50), reference_air));
  EXPECT_DOUBLE_EQ(induction(p, air(2, 50)).count(), induction(p, air(10, 50)).count());
  EXPECT_DOUBLE_EQ(induction(p, air(45, 50)).count(), induction(p, air(38, 50)).count());
}

TEST(Product, PotLifeIsShorterInWarmAir) {
  Product p = test::product(Mechanism::polyurethane_two_part);
  EXPECT_EQ(pot_life(p, air(30, 50)), std::nullopt);
  p.pot_life = Hours(4);
  EXPECT_NEAR(pot_life(p, reference_air)->count(), 4, 1e-12);
  EXPECT_LT(pot_life(p, air(30, 50))->count(), 2.6);
}

}  // namespace
}  // namespace coatday::finish
