// A board under the air and its films: both faces alike, one bare, in one air and through a year.

#include "wood/warp.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "climate/shop_air.h"
#include "wood/moisture.h"

namespace coatday::wood {
namespace {

constexpr Instant start{};
constexpr Board oak{Metres(0.022), Metres(0.6), 0.00369, MoistureContent(0.07)};
const Diffusivity usual = diffusion_across(film_test_temperature).middle;

std::vector<AirSpan> steady(double humidity, int days) {
  return air_spans(
      climate::AirSeries(climate::ConstantAir({Celsius(20), RelativeHumidity(humidity)}), start, start + std::chrono::hours(24 * days)));
}
std::vector<FilmChange> films(double back, double face) {
  return {{start, Side::back, FilmResistance(back)}, {start, Side::face, FilmResistance(face)}};
}

TEST(Warp, BothFacesAlikeDoNotCup) {
  for (const double film : {0.0, 1e8, 1e9}) {
    for (const Warp& warp : warp_over(oak, steady(0.6, 60), films(film, film), usual)) EXPECT_NEAR(warp.cup.value(), 0, 1e-12);
  }
}

/// FPL Technical Note D-12 (rev. 1952): uneven coatings warp wood. None keeps moisture out for good, so the cup rises and decays.
TEST(Warp, OneBareFaceGivesACupThatRisesThenDecays) {
  const auto history = warp_over(oak, steady(0.65, 700), films(0, 1e9), usual);
  const auto highest = std::min_element(history.begin(), history.end(), [](const Warp& a, const Warp& b) { return a.cup < b.cup; });
  EXPECT_LT(highest->cup.value(), -0.0005);  // the bare back takes up water first and bulges
  for (auto at = history.begin(); at + 1 != highest; ++at) EXPECT_GE(at->cup, (at + 1)->cup);
  for (auto at = highest + 1; at + 1 != history.end(); ++at) EXPECT_LE(at->cup.value(), (at + 1)->cup.value() + 1e-9);
  EXPECT_LT(std::abs(history.back().cup.value()), 0.02 * std::abs(highest->cup.value()));
  const WarpSummary told = summary(history);
  EXPECT_EQ(told.highest.at, highest->at);
  EXPECT_EQ(told.settled.cup, history.back().cup);
}

TEST(Warp, AFilmOnBothFacesLessensTheCupOfOneCoatFewer) {
  const auto cup = [](double back, double face) {
    return std::abs(summary(warp_over(oak, steady(0.65, 200), films(back, face), usual)).highest.cup.value());
  };
  EXPECT_LT(cup(1e8, 2e8), cup(0, 2e8));
  EXPECT_NEAR(cup(1e8, 2e8), cup(2e8, 1e8), 1e-9);  // whichever side it is
}

TEST(Warp, AFilmCountsFromItsCoatOn) {
  const Instant later = start + std::chrono::hours(240);
  const auto air = steady(0.65, 30);
  const auto bare = warp_over(oak, air, {}, usual);
  const auto coated = warp_over(oak, air, {{later, Side::face, FilmResistance(1e9)}}, usual);
  for (std::size_t i = 0; i < air.size(); ++i) {
    if (air[i].until <= later) {
      EXPECT_EQ(bare[i].cup, coated[i].cup);
    }
  }
  EXPECT_LT(coated[300].cup, bare[300].cup);
}

TEST(Warp, ColderWoodIsSlower) {
  EXPECT_GT(diffusion_across(Celsius(25)).low, diffusion_across(Celsius(15)).low);
  EXPECT_LT(film_factor(Celsius(30)), 1);
  EXPECT_NEAR(film_factor(film_test_temperature), 1, 1e-12);
}

/// The grid and the steps that are usual, against ones that are far finer, for one bare face through days and nights.
TEST(Warp, UsualGridAndStepsAreFineEnough) {
  const auto peak = [](int cells, double tolerance) {
    Slab slab(oak.thickness, oak.initial, cells);
    double most = 0;
    for (int hour = 0; hour < 24 * 60; ++hour) {
      const MoistureContent outside(0.11 + 0.01 * std::sin(hour * 0.2618));
      slab.advance({usual, {outside, still_air}, {outside, still_air + FilmResistance(1e9)}}, Seconds(3600), MoistureContent(tolerance));
      most = std::max(most, std::abs(sag(free_curvature(slab.cells(), oak.coefficient, oak.thickness), oak.width).value()));
    }
    return most;
  };
  const double fine = peak(120, 1e-6);
  EXPECT_NEAR(peak(Slab::usual_cells, Slab::usual_tolerance.value()), fine, 0.01 * fine);
}

TEST(AirSpans, AreTheMeanOfTheirRows) {
  const auto hours = steady(0.5, 2);
  ASSERT_EQ(hours.size(), 48U);
  EXPECT_NEAR(hours[7].equilibrium.value(), equilibrium_moisture({Celsius(20), RelativeHumidity(0.5)}).value(), 1e-12);
  EXPECT_EQ(hours[7].until - hours[7].from, std::chrono::hours(1));
  EXPECT_EQ(hours[7].until, hours[8].from);
}

}  // namespace
}  // namespace coatday::wood
