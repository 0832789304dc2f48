// evaporation.csv: the energies of the laws of solvents against evaporation that cools itself, which is held against published relative rates;
// those against the order in which films dry, too; and times of the shipped records. Weak sources are called weak in their rows.

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <vector>

#include "climate/psychrometrics.h"
#include "finish/law.h"
#include "input/open.h"
#include "tests/published/evaporation.h"
#include "tests/published/values.h"
#include "tests/support/source_dir.h"

namespace coatday::published {
namespace {

/// Of the way to its wet bulb, by which an evaporating liquid cools itself: one number for all of them, at which both the relative rates and the
/// energies of the laws come out (judgement).
constexpr double self_cooling = 0.75;

double vapour_pressure(const Value& v) { return Liquid(v.text("solvent")).vapour_pressure(v.number("t_C")) / 1000; }

/// Two liquids leave one after the other, which is about how their mixture does.
double mixed_rate(const Value& v) {
  const double humidity = v.has("rh") ? v.number("rh") : 0, t = v.number("t_C");
  const double first = Liquid(v.text("liquid")).rate(t, self_cooling, humidity);
  return v.has("and") ? 2 / (1 / first + 1 / Liquid(v.text("and")).rate(t, self_cooling, humidity)) : first;
}

double relative_evaporation(const Value& v) { return mixed_rate(v) / Liquid("n-butyl-acetate").rate(v.number("t_C"), self_cooling); }

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

finish::Law law_of(const Value& v) {
  return finish::default_law(word_of<finish::Mechanism>(v, "mechanism"), finish::Clock::drying).value();
}

const finish::Product& product(const Value& v, std::string_view input) {
  static const finish::Catalogue catalogue = input::open_catalogue({}, source_dir() + "/schedules", input::read_from_disk())->job.catalogue;
  const finish::Product* found = catalogue.product(v.text(input));
  if (found == nullptr) throw std::runtime_error(v.place + ": unknown product");
  return *found;
}

double hours(const finish::Product& product, finish::Stage stage) { return product.reference().hours[stage].value().count(); }

const Computations computations{
    {"vapour_pressure", vapour_pressure},
    {"activation", [](const Value& v) { return law_of(v).activation.value(); }},
    {"relative_evaporation", relative_evaporation},
    {"record", [](const Value& v) { return hours(product(v, "product"), word_of<finish::Stage>(v, "stage")); }},
};

TEST(Evaporation, PressuresRatesEnergiesAndRecords) {
  for (const Group& g : group({"evaporation.csv"})) check(g, computations);
}

/// Each row of a law's energy is what its liquids come to by themselves, and within the law's band.
TEST(Evaporation, EnergiesOfTheLawsFollowFromTheirLiquids) {
  int rows = 0;
  for (const Value& v : read_values("evaporation.csv")) {
    if (v.quantity != "activation") continue;
    ++rows;
    const double first = Liquid(v.text("liquid")).activation(self_cooling);
    const double energy = v.has("and") ? (first + Liquid(v.text("and")).activation(self_cooling)) / 2 : first;
    EXPECT_NEAR(energy, v.expected, 0.05) << v.place;
    const finish::Law law = law_of(v);
    EXPECT_TRUE(law.least < energy && energy < law.most) << v.place;
  }
  EXPECT_EQ(rows, 3);
}

TEST(Evaporation, WaterCoolsToTheWetBulbOfMoistAir) {
  for (const double humidity : {0.2, 0.5, 0.8}) {
    const climate::Air air{Celsius(23), RelativeHumidity(humidity)};
    EXPECT_NEAR(Liquid("water").wet_bulb(23, humidity), climate::wet_bulb(air).value(), 0.5);
  }
}

TEST(Evaporation, FilmsDryInTheOrderOfTheirSolvents) {
  std::vector<Value> rates;
  for (const Value& v : read_values("evaporation.csv")) {
    if (v.quantity == "relative_evaporation" && v.has("dries")) rates.push_back(v);
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
