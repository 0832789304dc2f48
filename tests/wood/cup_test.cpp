// Published values: tests/published/cup_test.cpp.

#include "wood/cup.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <vector>

namespace coatday::wood {
namespace {

constexpr Metres thick{0.025}, wide{0.6};

TEST(Cup, SymmetricStrainLeavesNothing) {
  for (const std::size_t n : {2U, 5U, 24U}) {
    std::vector<double> strain;
    for (std::size_t i = 0; i < n; ++i) strain.push_back(0.001 * static_cast<double>(std::min(i, n - 1 - i)) + 0.003);
    EXPECT_EQ(free_curvature(strain, thick), Curvature(0));
  }
}

TEST(Cup, EqualHalvesAreExactWithAnyEvenNumberOfCells) {
  for (const std::size_t n : {2U, 10U, 24U}) {
    std::vector<double> strain(n, 0.0);
    std::fill(strain.begin() + static_cast<std::ptrdiff_t>(n / 2), strain.end(), 0.002);
    EXPECT_NEAR(free_curvature(strain, thick).value(), 1.5 * 0.002 / 0.025, 1e-12);
  }
}

TEST(Cup, ALinearStrainIsOfSecondOrderInTheCells) {
  const auto error = [](int n) {
    std::vector<double> strain;
    for (int i = 0; i < n; ++i) strain.push_back(0.002 * (i + 0.5) / n);
    return 0.002 / 0.025 - free_curvature(strain, thick).value();
  };
  EXPECT_NEAR(error(10) / error(20), 4, 1e-6);
}

TEST(Cup, TheWetterFaceBulges) {
  EXPECT_GT(free_curvature(std::array{0.08, 0.10}, 0.003, thick), Curvature(0));
  EXPECT_LT(sag(free_curvature(std::array{0.10, 0.08}, 0.003, thick), wide), Metres(0));
}

/// The deflection of a beam with the held top's moments, integrated here by small steps.
TEST(Cup, HeldTopAgreesWithItsBeam) {
  const Curvature free(0.05);
  const HeldTop top = held(free, wide, thick, Gigapascals(1));
  const double half = 0.3, step = half / 30'000;
  double slope = 0, rise = 0, most = 0;
  for (int i = 0; i < 30'000; ++i) {
    const double x = (i + 0.5) * step;
    slope += step * free.value() * (1 - 1.5 * (1 - x / half));
    rise += step * slope;
    most = std::max(most, std::abs(rise));
  }
  EXPECT_NEAR(rise, 0, 1e-7);  // the edge lies on its line
  EXPECT_NEAR(top.bow.value(), most, 1e-7);
  EXPECT_NEAR(top.at_each_edge.value(), 1.5 * 1e9 * std::pow(0.025, 3) / 12 * 0.05 / half, 1e-9);
}

}  // namespace
}  // namespace coatday::wood
