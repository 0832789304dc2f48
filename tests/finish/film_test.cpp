// Films thicker and thinner than their record's. The exponents are judgement; what is checked is that they are kept to, and their range.
#include "finish/film.h"

#include <gtest/gtest.h>

#include <cmath>

#include "finish/coverage.h"
#include "tests/finish/samples.h"

namespace coatday::finish {
namespace {

/// 100 µm wet for its own times.
Product covering(Mechanism mechanism) {
  Product p = test::product(mechanism);
  p.stated_spreading_rate = SquareMetresPerLitre(11);
  p.thinner_share = 0.1;
  return p;
}

Step wet(double micrometres) {
  Step step;
  step.wet_film = Micrometres(micrometres);
  return step;
}

TEST(Film, OfTheTimesIsThatOfTheProductsOwnCoverageOrAsStated) {
  Product p = covering(Mechanism::water);
  EXPECT_NEAR(film_of_times(p).value(), 100, 1e-9);
  p.film_of_times = Micrometres(80);
  EXPECT_EQ(film_of_times(p), Micrometres(80));
}

TEST(Film, DryIsWetByVolumeSolidsAndThinner) {
  Product p = covering(Mechanism::water);
  Step step;
  step.dry_film = Micrometres(30);
  EXPECT_EQ(wet_film(step, p), std::nullopt);
  EXPECT_TRUE(film_refused(step, p));
  p.volume_solids = 0.4;
  step.thinner_share = 0.05;
  EXPECT_NEAR(wet_film(step, p)->value(), 30 * 1.15 / 0.4, 1e-9);
}

TEST(Film, DriesByItsLaw) {
  EXPECT_DOUBLE_EQ(drying_factor(wet(120), covering(Mechanism::water)).slow, 1.2);
  const DryingFactor thick = drying_factor(wet(150), covering(Mechanism::oxidative));
  EXPECT_NEAR(thick.fast, std::pow(1.5, 1.5), 1e-12);
  EXPECT_NEAR(thick.expected, std::pow(1.5, 1.75), 1e-12);
  EXPECT_NEAR(thick.slow, 2.25, 1e-12);
  const DryingFactor thin = drying_factor(wet(50), covering(Mechanism::oxidative));
  EXPECT_NEAR(thin.fast, 0.25, 1e-12);
  EXPECT_NEAR(thin.slow, std::pow(0.5, 1.5), 1e-12);
  EXPECT_EQ(drying_factor(Step{}, covering(Mechanism::oxidative)), DryingFactor{});
}

TEST(Film, IsRefusedBeyondWhatIsKnown) {
  EXPECT_EQ(film_refused(wet(150), covering(Mechanism::water)), std::nullopt);
  EXPECT_TRUE(film_refused(wet(151), covering(Mechanism::water)));
  EXPECT_EQ(film_refused(wet(200), covering(Mechanism::oxidative)), std::nullopt);
  EXPECT_TRUE(film_refused(wet(201), covering(Mechanism::oxidative)));
  EXPECT_TRUE(film_refused(wet(49), covering(Mechanism::oxidative)));
  EXPECT_TRUE(film_refused(wet(100), covering(Mechanism::epoxy)));
  EXPECT_EQ(film_refused(Step{}, covering(Mechanism::epoxy)), std::nullopt);
}

TEST(Film, TakesAsMuchAsItIsThick) {
  const Product p = covering(Mechanism::water);
  const std::vector<Surface> faces{{SquareMetres(2), false}};
  EXPECT_NEAR(need(wet(150), p, Method::brush, faces) / need(p, Method::brush, faces), 1.5, 1e-12);
  Step thinned = wet(120);  // 100 µm of it from the can
  thinned.thinner_share = 0.1;
  EXPECT_NEAR(spreading_rate(thinned, p).value(), 10, 1e-9);
}

// In air that stays as the record's, every clock shows elapsed time.
TEST(Film, EveryStageKeepsToTheSafeSide) {
  for (const Mechanism mechanism : {Mechanism::water, Mechanism::oxidative}) {
    const Product p = test::product(mechanism);
    const CureClock clock(p, test::series(test::constant(100, reference_air)), Estimate::expected);
    for (std::size_t s = 0; s < stage_count; ++s) {
      const auto stage = static_cast<Stage>(s);
      const Instant as_recorded = *clock.reached(stage, test::monday);
      const Instant thick = *clock.reached(stage, test::monday, 1.5), thin = *clock.reached(stage, test::monday, 0.5);
      const bool closes = stage == Stage::recoat_close;
      EXPECT_TRUE(closes ? thick <= as_recorded : thick > as_recorded) << word(stage);
      EXPECT_TRUE(closes || clock_of(stage) == Clock::drying ? thin < as_recorded : thin == as_recorded) << word(stage);
    }
    const Hours recoat = *p.reference().hours[Stage::recoat];
    EXPECT_NEAR(Hours(*clock.reached(Stage::recoat, test::monday, 1.5) - test::monday).count(), 1.5 * recoat.count(), 2.0 / 3600);
  }
}

}  // namespace
}  // namespace coatday::finish
