#include "finish/fit.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/finish/samples.h"

namespace coatday::finish {
namespace {

using climate::Air;
using test::air;

/// A label that follows the law exactly.
Product labelled(Mechanism mechanism, const Law& truth, Stage stage, const std::vector<Air>& airs) {
  Product p = test::product(mechanism);
  p.rows.clear();
  for (const Air& a : airs) {
    StageRow row{a, {}};
    row.hours[stage] = Hours(4 / rate(truth, a, airs.front(), Side::fast));
    p.rows.push_back(row);
  }
  return p;
}

TEST(Fit, FindsTheActivationEnergyOfALabel) {
  Law truth = *default_law(Mechanism::oxidative, Clock::drying);
  truth.activation = KilojoulesPerMole(63);
  const Product p = labelled(Mechanism::oxidative, truth, Stage::recoat, {air(23, 50), air(15, 50), air(30, 60)});
  const auto fit = fit_law(p, Clock::drying);
  ASSERT_TRUE(fit);
  EXPECT_NEAR(fit->law.activation.value(), 63, 1e-9);
  EXPECT_LT(fit->residual, 1e-9);
}

TEST(Fit, FindsTheWetBulbShareOfALabel) {
  for (const double share : {0.0, 0.23, 0.5, 1.0}) {
    Law truth = *default_law(Mechanism::water, Clock::drying);
    truth.wet_bulb_share = share;
    const Product p = labelled(Mechanism::water, truth, Stage::recoat, {air(23, 50), air(12, 50), air(30, 30), air(23, 80)});
    const auto fit = fit_law(p, Clock::drying);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->law.wet_bulb_share, share, 1e-5);
    EXPECT_LT(fit->residual, 1e-5);
  }
}

TEST(Fit, MeetsTheEndOfTheRange) {
  Law truth = *default_law(Mechanism::water, Clock::drying);
  Product p = labelled(Mechanism::water, truth, Stage::recoat, {air(23, 50), air(12, 50)});
  *p.rows[1].hours[Stage::recoat] *= 10;  // more than any share explains
  const double share = fit_law(p, Clock::drying)->law.wet_bulb_share;
  EXPECT_TRUE(share == 0 || share == 1) << share;
}

// The label takes 1.5 times as long as the law in its second air.
TEST(Fit, ALawOfTheRecordStandsAndItsRowsTellHowFarItIsOff) {
  Law law = *default_law(Mechanism::oxidative, Clock::drying);
  Product p = labelled(Mechanism::oxidative, law, Stage::recoat, {air(23, 50), air(13, 50)});
  *p.rows[1].hours[Stage::recoat] *= 1.5;
  p.drying_law = law;
  const auto fit = as_recorded(p, Stage::recoat);
  ASSERT_TRUE(fit);
  EXPECT_EQ(fit->law, law);
  EXPECT_NEAR(fit->residual, std::log(1.5), 1e-9);
  EXPECT_FALSE(as_recorded(p, Stage::sand)) << "no row has it";
}

// Least squares through the first row, by hand: E = sum(x y) / sum(x x) with y = ln(time ratio), x = (1/T - 1/T_first) / R.
TEST(Fit, IsTheLeastSquaresOfALabelThatFollowsNoLaw) {
  Product p = test::product(Mechanism::epoxy);
  p.rows = {{air(24, 50), {}}, {air(16, 50), {}}, {air(32, 50), {}}};
  p.rows[0].hours[Stage::recoat] = Hours(6);
  p.rows[1].hours[Stage::recoat] = Hours(12);
  p.rows[2].hours[Stage::recoat] = Hours(4);
  const auto x = [](double t) { return (1 / (t + 273.15) - 1 / 297.15) / 8.31446261815324e-3; };
  const double e = (x(16) * std::log(2) + x(32) * std::log(4.0 / 6)) / (x(16) * x(16) + x(32) * x(32));
  const auto fit = fit_law(p, Clock::drying);
  ASSERT_TRUE(fit);
  EXPECT_NEAR(fit->law.activation.value(), e, 1e-9);
  EXPECT_NEAR(fit->residual, std::max(std::abs(std::log(2) - e * x(16)), std::abs(std::log(4.0 / 6) - e * x(32))), 1e-9);
  EXPECT_EQ(fit->law.source, "fitted to the rows of the record");
}

TEST(Fit, NeverDriesSlowerInWarmerAir) {
  Product p = test::product(Mechanism::epoxy);
  p.rows = {{air(20, 50), {}}, {air(30, 50), {}}};
  p.rows[0].hours[Stage::recoat] = Hours(6);
  p.rows[1].hours[Stage::recoat] = Hours(7);
  const auto fit = fit_law(p, Clock::drying);
  ASSERT_TRUE(fit);
  EXPECT_EQ(fit->law.activation, KilojoulesPerMole(0));
  EXPECT_NEAR(fit->residual, std::log(7.0 / 6), 1e-12);
}

TEST(Fit, TakesTheLabelsAirIntoTheRange) {
  const Law truth = *default_law(Mechanism::epoxy, Clock::drying);
  const Product p = labelled(Mechanism::epoxy, truth, Stage::sand, {air(23, 50), air(4, 50), air(41, 50)});
  const auto fit = fit_law(p, Clock::drying);
  ASSERT_TRUE(fit);
  EXPECT_EQ(fit->law.no_credit_below, Celsius(4));
  EXPECT_EQ(fit->law.hottest, Celsius(41));
}

TEST(Fit, CountsACureThatWaitsForRecoatFromThere) {
  Product p = test::product(Mechanism::water);
  p.rows = {{air(23, 50), {}}, {air(13, 50), {}}};
  const double slowdown = std::exp(40 / 8.31446261815324e-3 * (1 / 286.15 - 1 / 296.15));
  p.rows[0].hours[Stage::recoat] = Hours(2);
  p.rows[0].hours[Stage::full_cure] = Hours(2 + 100);
  p.rows[1].hours[Stage::recoat] = Hours(5);
  p.rows[1].hours[Stage::full_cure] = Hours(5 + 100 * slowdown);
  const auto fit = fit_law(p, Clock::cure);
  ASSERT_TRUE(fit);
  EXPECT_NEAR(fit->law.activation.value(), 40, 1e-9);
  EXPECT_TRUE(fit->law.cure_starts_at_recoat);
}

TEST(Fit, OfAVapourPressureTellsOnlyHowFarTheLabelIsOff) {
  Product p = test::product(Mechanism::moisture_cure);
  p.rows = {{air(23, 50), {}}, {air(23, 75), {}}};
  p.rows[0].hours[Stage::recoat] = Hours(6);
  p.rows[1].hours[Stage::recoat] = Hours(5);
  const auto fit = fit_law(p, Clock::drying);
  ASSERT_TRUE(fit);
  EXPECT_NEAR(fit->residual, std::log(5.0 / 4), 1e-12);
  EXPECT_EQ(fit->law.source, default_law(Mechanism::moisture_cure, Clock::drying)->source);
}

TEST(Fit, NeedsTwoRowsThatShareAStageAndDiffer) {
  Product p = test::product(Mechanism::oxidative);
  EXPECT_FALSE(fit_law(p, Clock::drying));  // one row
  p.rows.push_back({air(15, 50), {}});
  EXPECT_FALSE(fit_law(p, Clock::drying));  // no stage in common
  p.rows.back().hours[Stage::full_cure] = Hours(500);
  EXPECT_FALSE(fit_law(p, Clock::drying));
  EXPECT_TRUE(fit_law(p, Clock::cure));
  p.rows.back().air = air(23, 30);
  EXPECT_FALSE(fit_law(p, Clock::cure));  // the same temperature
  EXPECT_FALSE(fit_law(test::product(Mechanism::heat_cured), Clock::cure));
}

TEST(Fit, GivesEachStageItsOwnLaw) {
  Product p = test::product(Mechanism::oxidative);
  const StageHours first = p.rows.front().hours;
  p.rows.push_back({air(13, 50), {}});
  const auto slowed = [&](Stage stage, double activation) {
    p.rows[1].hours[stage] = *first[stage] * std::exp(activation / 8.31446261815324e-3 * (1 / 286.15 - 1 / 296.15));
  };
  slowed(Stage::recoat, 60);
  slowed(Stage::sand, 45);
  slowed(Stage::full_cure, 70);
  const auto fits = fit_stages(p);
  ASSERT_TRUE(fits[Stage::recoat] && fits[Stage::sand] && fits[Stage::full_cure]);
  EXPECT_NEAR(fits[Stage::recoat]->law.activation.value(), 60, 1e-9);
  EXPECT_NEAR(fits[Stage::sand]->law.activation.value(), 45, 1e-9);
  EXPECT_NEAR(fits[Stage::full_cure]->law.activation.value(), 70, 1e-9);
  EXPECT_LT(fits[Stage::recoat]->residual, 1e-9);
  EXPECT_FALSE(fits[Stage::tack_free] || fits[Stage::pack]);  // one row each
  const double together = fit_law(p, Clock::drying)->law.activation.value();
  EXPECT_GT(together, 45);
  EXPECT_LT(together, 60);
}

TEST(Fit, TakesStagesTogetherThatWouldOvertakeEachOther) {
  Product p = test::product(Mechanism::oxidative);
  p.rows = {{air(23, 50), {}}, {air(21, 50), {}}, {air(10, 50), {}}};
  p.rows[0].hours[Stage::tack_free] = Hours(8);
  p.rows[0].hours[Stage::recoat] = Hours(9);
  p.rows[1].hours[Stage::recoat] = Hours(9.2);
  p.rows[2].hours[Stage::tack_free] = Hours(40);  // recoat, by its own rows, would come long before in such a cold
  const auto fits = fit_stages(p);
  EXPECT_FALSE(fits[Stage::tack_free] || fits[Stage::recoat]);
  EXPECT_TRUE(fit_law(p, Clock::drying));
}

TEST(Fit, PassesOverSaturatedAirWhereWaterCannotDry) {
  Product p = test::product(Mechanism::water);
  p.rows.push_back({air(23, 100), p.rows.front().hours});
  EXPECT_FALSE(fit_law(p, Clock::drying));
}

}  // namespace
}  // namespace coatday::finish
