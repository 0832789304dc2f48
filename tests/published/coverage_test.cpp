// coverage.csv: spreading rates and transfer efficiencies. misprints.csv: what a document prints against its own formula.

#include "finish/coverage.h"

#include <algorithm>
#include <stdexcept>

#include "tests/published/values.h"

namespace coatday::published {
namespace {

constexpr double litre_per_gallon = 3.785411784;
constexpr double square_metre_per_square_foot = 0.09290304;
constexpr double micrometre_per_mil = 25.4;

double square_feet_per_gallon(const Value& v) {
  const Micrometres film(v.number("film_mil") * micrometre_per_mil);
  const double metric = finish::theoretical_spreading_rate(v.number("solids_pct") / 100, film).value();
  return metric * litre_per_gallon / square_metre_per_square_foot;
}

double transfer_efficiency(const Value& v) {
  const auto words = finish::words<finish::Method>();
  const auto found = std::find(words.begin(), words.end(), v.text("method"));
  if (found == words.end()) throw std::runtime_error(v.place + ": unknown method");
  return finish::transfer(static_cast<finish::Method>(found - words.begin())).efficiency;
}

const Computations computations{{"theoretical_coverage", square_feet_per_gallon}, {"transfer_efficiency", transfer_efficiency}};

class Coverage : public testing::TestWithParam<Group> {};
TEST_P(Coverage, Agrees) { check(GetParam(), computations); }
INSTANTIATE_TEST_SUITE_P(Published, Coverage, testing::ValuesIn(group({"coverage.csv"})), group_name);

TEST(Misprints, AreNotRepeated) {
  const std::vector<Value> printed = read_values("misprints.csv");
  ASSERT_EQ(printed.size(), 1u);
  EXPECT_EQ(printed[0].expected, 600);
  EXPECT_NEAR(square_feet_per_gallon(printed[0]), 800, 0.003 * 800) << printed[0].source;
}

}  // namespace
}  // namespace coatday::published
