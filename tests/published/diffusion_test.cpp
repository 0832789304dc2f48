// diffusion.csv: Crank's plane sheet with and without surface resistance. Half a sheet with its back sealed, of thickness a = 1 m and
// diffusivity 1 m²/s, so that seconds are Fourier numbers: Fo = D t / a², L = a / (D R).

#include <cmath>
#include <limits>

#include "tests/published/values.h"
#include "wood/slab.h"

namespace coatday::published {
namespace {

using wood::FilmResistance;
using wood::Slab;

wood::SlabConditions half_sheet(double resistance) {
  const FilmResistance sealed(std::numeric_limits<double>::infinity());
  return {wood::Diffusivity(1), {MoistureContent(1), sealed}, {MoistureContent(1), FilmResistance(resistance)}};
}

Slab at(double fourier, double resistance, int cells = 400) {
  Slab slab(Metres(1), MoistureContent(0), cells);
  slab.advance(half_sheet(resistance), wood::Seconds(fourier), MoistureContent(2e-6));
  return slab;
}

double resistance(const Value& v) { return v.has("L") ? 1 / v.number("L") : 0; }
double uptake(const Value& v) { return at(v.number("Fo"), resistance(v)).mean().value(); }

double profile(const Value& v) {
  const Slab slab = at(v.number("Fo"), 0);
  const auto cells = slab.cells();
  const double place = std::max(0.0, v.number("x_a") * static_cast<double>(cells.size()) - 0.5);
  const auto below = static_cast<std::size_t>(place);
  return cells[below] + (place - static_cast<double>(below)) * (cells[below + 1] - cells[below]);
}

double half_time(const Value& v) {
  double low = 0, high = 1;
  while (high - low > 1e-6) {
    const double middle = (low + high) / 2;
    (at(middle, 0).mean().value() < v.number("share") ? low : high) = middle;
  }
  return low;
}

/// From the rate at which the last of the change decays: exp(-root² Fo).
double decay_root(const Value& v) {
  Slab slab = at(1, resistance(v));
  const double before = 1 - slab.mean().value();
  slab.advance(half_sheet(resistance(v)), wood::Seconds(0.5), MoistureContent(2e-8));
  return std::sqrt(2 * std::log(before / (1 - slab.mean().value())));
}

const Computations computations{
    {"uptake", uptake}, {"uptake_with_resistance", uptake}, {"profile", profile}, {"half_time", half_time}, {"decay_root", decay_root},
};

class Diffusion : public testing::TestWithParam<Group> {};
TEST_P(Diffusion, Agrees) { check(GetParam(), computations); }
INSTANTIATE_TEST_SUITE_P(Published, Diffusion, testing::ValuesIn(group({"diffusion.csv"})), group_name);

/// Against the exact uptake the error falls with the square of the cells: four times for each doubling.
TEST(Diffusion, ErrorFallsWithTheSquareOfTheCells) {
  int compared = 0;
  for (const Value& v : read_values("diffusion.csv")) {
    if (v.quantity != "uptake" && v.quantity != "uptake_with_resistance") continue;
    if (v.number("Fo") < 0.1 || v.expected > 0.999) continue;
    const auto error = [&](int cells) { return at(v.number("Fo"), resistance(v), cells).mean().value() - v.expected; };
    const double coarse = error(10), fine = error(20);
    EXPECT_NEAR(coarse / fine, 4, 0.4) << v.place;
    ++compared;
  }
  EXPECT_GT(compared, 30);
}

}  // namespace
}  // namespace coatday::published
