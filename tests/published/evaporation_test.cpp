// evaporation.csv: vapour pressures of solvents against the bands of the flash-off laws, relative evaporation rates against the order in which
// films dry, and times of the shipped records. Weak sources are called weak in their rows.

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <vector>

#include "finish/law.h"
#include "input/load.h"
#include "tests/published/values.h"
#include "tests/support/source_dir.h"

namespace coatday::published {
namespace {

/// log10 of the pressure in bar is a - b / (t + c), t in °C.
struct Antoine {
  std::string_view solvent;
  double a, b, c;
};
constexpr std::array antoine{Antoine{"ethanol", 5.33675, 1648.22, 230.918}, Antoine{"acetone", 4.2184, 1197.01, 228.06},
                             Antoine{"methyl-ethyl-ketone", 4.1386, 1232.63, 218.69}, Antoine{"toluene", 4.05043, 1327.62, 217.625}};

const Antoine& of(const Value& v) {
  const auto found = std::find_if(antoine.begin(), antoine.end(), [&](const Antoine& a) { return a.solvent == v.text("solvent"); });
  if (found == antoine.end()) throw std::runtime_error(v.place + ": unknown solvent");
  return *found;
}

double vapour_pressure(const Value& v) { return 100 * std::pow(10, of(v).a - of(v).b / (v.number("t_C") + of(v).c)); }

template <class Enum>
Enum word_of(const Value& v, std::string_view input) {
  std::string name = v.text(input);
  const auto words = finish::words<Enum>();
  auto found = std::find(words.begin(), words.end(), name);
  if (found == words.end()) {
    std::replace(name.begin(), name.end(), '-', ' ');
    found = std::find(words.begin(), words.end(), name);
  }
  if (found == words.end()) throw std::runtime_error(v.place + ": unknown " + std::string(input));
  return static_cast<Enum>(found - words.begin());
}

/// Clausius and Clapeyron's slope, where the law's band holds it; else the end of the band that it passes.
double activation_in_band(const Value& v) {
  constexpr double gas_constant = 8.31446261815324e-3;
  const double kelvin = v.number("t_C") + 273.15, per_kelvin = std::log(10) * of(v).b / std::pow(v.number("t_C") + of(v).c, 2);
  const finish::Law law = finish::default_law(word_of<finish::Mechanism>(v, "mechanism"), finish::Clock::drying).value();
  constexpr double rounding = 0.15;  // the band's ends are whole kJ/mol
  return std::clamp(gas_constant * kelvin * kelvin * per_kelvin, law.least - rounding, law.most + rounding);
}

const finish::Product& product(const Value& v, std::string_view input) {
  static const finish::Catalogue catalogue = input::load_catalogue(source_dir() + "/schedules", {}, input::read_from_disk()).catalogue;
  const finish::Product* found = catalogue.product(v.text(input));
  if (found == nullptr) throw std::runtime_error(v.place + ": unknown product");
  return *found;
}

double hours(const finish::Product& product, finish::Stage stage) { return product.reference().hours[stage].value().count(); }

const Computations computations{
    {"vapour_pressure", vapour_pressure},
    {"activation_in_band", activation_in_band},
    {"record", [](const Value& v) { return hours(product(v, "product"), word_of<finish::Stage>(v, "stage")); }},
};

TEST(Evaporation, PressuresEnergiesAndRecords) {
  for (const Group& g : group({"evaporation.csv"})) {
    if (g.values.front().quantity != "relative_evaporation") check(g, computations);
  }
}

TEST(Evaporation, FilmsDryInTheOrderOfTheirSolvents) {
  std::vector<Value> rates;
  for (const Value& v : read_values("evaporation.csv")) {
    if (v.quantity == "relative_evaporation") rates.push_back(v);
  }
  ASSERT_EQ(rates.size(), 3U);
  std::sort(rates.begin(), rates.end(), [](const Value& a, const Value& b) { return a.expected > b.expected; });
  for (std::size_t i = 1; i < rates.size(); ++i) {
    const Value &fast = rates[i - 1], &slow = rates[i];
    ASSERT_GT(fast.expected - fast.tolerance, slow.expected + slow.tolerance) << "the bands do not tell them apart";
    EXPECT_LT(hours(product(fast, "dries"), finish::Stage::tack_free), hours(product(slow, "dries"), finish::Stage::tack_free));
  }
}

}  // namespace
}  // namespace coatday::published
