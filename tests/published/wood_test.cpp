// The Wood Handbook's tables 4-2, 4-3 and 13-5 and its example of movement. The program holds the coefficients of table 13-5, many from
// memory; the shrinkages of table 4-3 must follow from them.

#include <stdexcept>

#include "tests/published/values.h"
#include "wood/heat.h"
#include "wood/moisture.h"

namespace coatday::published {
namespace {

using wood::Species;

double equilibrium_moisture_pct(const Value& v) {
  const Celsius t = v.has("t_F") ? Celsius((v.number("t_F") - 32) / 1.8) : Celsius(v.number("t_C"));
  return 100 * wood::equilibrium_moisture({t, RelativeHumidity(v.number("rh_pct") / 100)}).value();
}

const Species& species(const Value& v) {
  const Species* found = wood::find_species(v.text("species"));
  if (!found) throw std::runtime_error(v.place + ": unknown species " + v.text("species"));
  return *found;
}

double size_after_mm(const Value& v) {
  const auto pct = [&v](std::string_view input) { return MoistureContent(v.number(input) / 100); };
  return 1000 * wood::size_after(Metres(v.number("initial_mm") / 1000), v.number("coefficient"), pct("from_pct"), pct("to_pct")).value();
}

double specific_heat(const Value& v) {
  return wood::specific_heat(Celsius(v.number("t_C")), MoistureContent(v.number("mc_pct") / 100)) / 1000;
}

/// Shrinkage S in percent behind a coefficient of change C = S / (3000 - 20 S): fibre saturation at 30 %, size taken at 10 %.
double shrinkage_pct(double coefficient) { return 3000 * coefficient / (1 + 20 * coefficient); }

const Computations computations{
    {"equilibrium_moisture", equilibrium_moisture_pct},
    {"radial_change", [](const Value& v) { return species(v).radial; }},
    {"tangential_change", [](const Value& v) { return species(v).tangential; }},
    {"radial_shrinkage", [](const Value& v) { return shrinkage_pct(species(v).radial); }},
    {"tangential_shrinkage", [](const Value& v) { return shrinkage_pct(species(v).tangential); }},
    {"size_after", size_after_mm},
    {"specific_heat_of_wood", specific_heat},
};

class Wood : public testing::TestWithParam<Group> {};
TEST_P(Wood, Agrees) { check(GetParam(), computations); }
INSTANTIATE_TEST_SUITE_P(Published, Wood,
                         testing::ValuesIn(group({"dimensional_change.csv", "equilibrium_moisture.csv", "heat.csv", "shrinkage.csv"})),
                         group_name);

}  // namespace
}  // namespace coatday::published
