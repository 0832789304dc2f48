// ventilation.csv: the air that thins solvent vapour, the table behind it, and the table against the ideal gas.

#include "finish/solvent.h"

#include <stdexcept>

#include "tests/published/values.h"

namespace coatday::published {
namespace {

constexpr double m3_per_l_per_ft3_per_gallon = 0.028316846592 / 3.785411784;

const finish::Solvent& row(const Value& v) {
  const finish::Solvent* solvent = finish::solvent(v.text("solvent"));
  if (solvent == nullptr) throw std::runtime_error(v.place + ": unknown solvent");
  return *solvent;
}

double in_ft3_per_gallon(CubicMetresPerLitre of_liquid) { return of_liquid.value() / m3_per_l_per_ft3_per_gallon; }

/// V = density / molar mass x RT/p; R = 8.314462618 J/(mol K), CODATA 2018.
double by_ideal_gas(const Value& v) {
  constexpr double kelvin = (70 - 32) / 1.8 + 273.15, molar_m3 = 8.314462618 * kelvin / 101325;
  return in_ft3_per_gallon(CubicMetresPerLitre(row(v).density.value() / v.number("molar_mass") * molar_m3));
}

const Computations computations{
    {"dilution_air", [](const Value& v) { return in_ft3_per_gallon(finish::dilution_air(row(v), v.number("share"))); }},
    {"vapour", [](const Value& v) { return in_ft3_per_gallon(row(v).vapour); }},
    {"lower_limit", [](const Value& v) { return 100 * row(v).lower_limit; }},
    {"ideal_gas_vapour", by_ideal_gas},
    {"table_by_ideal_gas", by_ideal_gas},
};

class Ventilation : public testing::TestWithParam<Group> {};
TEST_P(Ventilation, Agrees) { check(GetParam(), computations); }
INSTANTIATE_TEST_SUITE_P(Published, Ventilation, testing::ValuesIn(group({"ventilation.csv"})), group_name);

TEST(VentilationTable, HasEveryRowOfTheTable) { EXPECT_EQ(finish::solvents().size(), 27U); }

}  // namespace
}  // namespace coatday::published
