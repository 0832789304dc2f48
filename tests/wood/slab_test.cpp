// Order, conservation and symmetry of the scheme. Exact solutions: tests/published/diffusion_test.cpp.

#include "wood/slab.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace coatday::wood {
namespace {

constexpr Metres thick{0.02};
constexpr Diffusivity usual{1e-10};
constexpr FilmResistance sealed{std::numeric_limits<double>::infinity()};

SlabConditions both(double equilibrium, FilmResistance film, Diffusivity diffusivity = usual) {
  const FaceCondition side{MoistureContent(equilibrium), film};
  return {diffusivity, side, side};
}

double after(const SlabConditions& conditions, int cells, double days, double tolerance) {
  Slab slab(thick, MoistureContent(0.06), cells);
  slab.advance(conditions, Seconds(86400 * days), MoistureContent(tolerance));
  return slab.mean().value();
}

TEST(Slab, GridConvergesWithTheSecondOrder) {
  for (const FilmResistance film : {no_film, FilmResistance(1e8), FilmResistance(1e9)}) {
    const auto at = [&](int cells) { return after(both(0.12, film), cells, 5, 1e-7); };
    const double coarse = at(10), middle = at(20), fine = at(40);
    EXPECT_NEAR((coarse - middle) / (middle - fine), 4, 0.3) << film.value();
  }
}

/// Steps of equal length, by a tolerance that never binds.
double in_steps(int count) {
  Slab slab(thick, MoistureContent(0.06), 20);
  for (int i = 0; i < count; ++i) slab.advance(both(0.12, FilmResistance(1e8)), Seconds(86400.0 * 20 / count), MoistureContent(1));
  EXPECT_EQ(slab.steps(), count);
  return slab.mean().value();
}

TEST(Slab, OddAndEvenCountsOfCellsLieOnOneLine) {
  for (const FilmResistance film : {no_film, FilmResistance(1e8)}) {
    SlabConditions uneven = both(0.12, film);
    uneven.face.film = FilmResistance(3e7);
    const auto at = [&](int cells) { return after(uneven, cells, 5, 1e-7); };
    for (const int odd : {3, 5, 9, 25}) EXPECT_NEAR(at(odd), (at(odd - 1) + at(odd + 1)) / 2, 0.015 / (odd * odd)) << odd;
  }
}

TEST(Slab, StepsConvergeWithTheSecondOrder) {
  const double coarse = in_steps(20), middle = in_steps(40), fine = in_steps(80);
  EXPECT_NEAR((coarse - middle) / (middle - fine), 4, 0.5);
}

TEST(Slab, ATighterToleranceTakesMoreStepsAndIsNearer) {
  const double exact = after(both(0.12, no_film), 24, 3, 1e-8);
  double error = 1;
  for (const double tolerance : {1e-2, 1e-3, 1e-4, 1e-5}) {
    const double now = std::abs(after(both(0.12, no_film), 24, 3, tolerance) - exact);
    EXPECT_LT(now, error) << tolerance;
    EXPECT_LT(now, tolerance) << tolerance;
    error = now;
  }
}

RC_GTEST_PROP(Slab, WhatComesInStaysIn, ()) {
  const auto some = [](double low, double high) { return low * std::pow(high / low, *rc::gen::inRange(0, 1001) / 1000.0); };
  Slab slab(Metres(some(0.003, 0.1)), MoistureContent(some(0.04, 0.2)), *rc::gen::inRange(2, 60));
  const double before = slab.mean().value();
  double gained = 0;
  for (int i = 0; i < 20; ++i) {
    const SlabConditions now{Diffusivity(some(1e-11, 1e-9)),
                             {MoistureContent(some(0.03, 0.2)), FilmResistance(some(1e4, 1e11))},
                             {MoistureContent(some(0.03, 0.2)), FilmResistance(some(1e4, 1e11))}};
    gained += slab.advance(now, Seconds(some(60, 1e6))).value();
  }
  RC_ASSERT(std::abs(slab.mean().value() - before - gained) < 1e-10 * slab.mean().value());
}

TEST(Slab, SealedOnBothFacesKeepsItsMoisture) {
  Slab slab(thick, MoistureContent(0.08));
  EXPECT_EQ(slab.advance(both(0.15, sealed), Seconds(1e7)), MoistureContent(0));
  for (const double cell : slab.cells()) EXPECT_EQ(cell, 0.08);
}

TEST(Slab, StaysBetweenWhatItWasAndTheAir) {
  Slab slab(thick, MoistureContent(0.06), 60);
  for (int hour = 0; hour < 500; ++hour) {
    slab.advance({usual, {MoistureContent(0.12), FilmResistance(2e9)}, {MoistureContent(0.12), no_film}}, Seconds(3600));
    for (const double cell : slab.cells()) {
      EXPECT_GE(cell, 0.06 - 1e-4);
      EXPECT_LE(cell, 0.12 + 1e-4);
    }
  }
}

TEST(Slab, SettlesWhereTheAirIs) {
  Slab slab(thick, MoistureContent(0.06));
  slab.advance(both(0.12, FilmResistance(1e8)), Seconds(1e9));
  for (const double cell : slab.cells()) EXPECT_NEAR(cell, 0.12, 1e-9);
}

TEST(Slab, RefusesWhatIsNoSlab) {
  EXPECT_THROW(Slab(Metres(0), MoistureContent(0.1)), std::invalid_argument);
  EXPECT_THROW(Slab(thick, MoistureContent(0.1), 1), std::invalid_argument);
  Slab slab(thick, MoistureContent(0.1));
  EXPECT_THROW(slab.advance(both(0.1, no_film, Diffusivity(0)), Seconds(1)), std::invalid_argument);
  EXPECT_THROW(slab.advance(both(0.1, no_film), Seconds(-1)), std::invalid_argument);
}

}  // namespace
}  // namespace coatday::wood
