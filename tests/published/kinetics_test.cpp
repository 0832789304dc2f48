// kinetics.csv: how times change with the air, activation energies, limits of application. Rounded rules of the trade, not measurements:
// each row's tolerance says how far it can be trusted.

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <vector>

#include "climate/psychrometrics.h"
#include "climate/shop_air.h"
#include "finish/application_limits.h"
#include "finish/clock.h"
#include "tests/published/values.h"

namespace coatday::published {
namespace {

using climate::Air;
using finish::Clock;
using finish::Law;

Air at(double celsius) { return {Celsius(celsius), RelativeHumidity(0.5)}; }
double from_fahrenheit(double t) { return (t - 32) / 1.8; }

finish::Mechanism mechanism(const Value& v) {
  const auto words = finish::words<finish::Mechanism>();
  const auto found = std::find(words.begin(), words.end(), v.text("mechanism"));
  if (found == words.end()) throw std::runtime_error(v.place + ": unknown mechanism");
  return static_cast<finish::Mechanism>(found - words.begin());
}

Law law(const Value& v, Clock clock) { return finish::default_law(mechanism(v), clock).value(); }

double time(const Value& v) {
  const double rate = finish::rate(law(v, Clock::drying), at(from_fahrenheit(v.number("to_F"))), at(from_fahrenheit(v.number("from_F"))));
  return v.number("from_h") / rate;
}

double pot_life_ratio(const Value& v) {
  finish::Product mix;
  mix.mechanism = mechanism(v);
  mix.pot_life = Hours(1);
  return *finish::pot_life(mix, at(v.number("to_C"))) / *finish::pot_life(mix, at(v.number("from_C")));
}

double induction(const Value& v) {
  finish::Product mix;
  mix.mechanism = mechanism(v);
  mix.two_part = finish::TwoPart{1, 1, Hours(1)};
  const auto stands = [&](const char* key) { return finish::induction(mix, at(from_fahrenheit(v.number(key)))); };
  return v.number("from_h") * (stands("to_F") / stands("from_F"));
}

double water_drying_rate(const Value& v) {
  Law law = finish::default_law(finish::Mechanism::water, Clock::drying).value();
  law.wet_bulb_share = v.number("share");
  return finish::rate(law, {Celsius(v.number("t_C")), RelativeHumidity(v.number("rh_pct") / 100)}, finish::reference_air);
}

/// The dampest air in which a coat with this margin may go on, found by halving.
double dampest_at_margin(const Value& v) {
  finish::Product product;
  product.limits.dew_point_margin = Kelvins(v.number("margin_K"));
  const Instant start{};
  double low = 0.05, high = 0.85;
  while (high - low > 1e-9) {
    const double middle = (low + high) / 2;
    const climate::AirSeries air(climate::ConstantAir({Celsius(v.number("t_C")), RelativeHumidity(middle)}), start,
                                 start + std::chrono::hours(1));
    (finish::limit_exceeded(product, air, start, start) ? high : low) = middle;
  }
  return 100 * low;
}

Law bare_arrhenius(double activation) {
  Law law;
  law.activation = KilojoulesPerMole(activation);
  return law;
}

/// Temperatures C_1, C_2 ... and, where given, the hours h_1, h_2 ... at each.
struct Spell {
  double celsius;
  double hours;
};
std::vector<Spell> history(const Value& v) {
  std::vector<Spell> spells;
  for (int i = 1; v.has("C_" + std::to_string(i)); ++i) {
    const std::string hours = "h_" + std::to_string(i);
    spells.push_back({v.number("C_" + std::to_string(i)), v.has(hours) ? v.number(hours) : 1});
  }
  return spells;
}

/// Air that goes through a history from `begin` on.
class Past final : public climate::AirSource {
 public:
  explicit Past(std::vector<Spell> spells) : spells_(std::move(spells)) {}
  [[nodiscard]] Air at(Instant t) const override {
    double left = Hours(t - Instant{}).count();
    for (const Spell& spell : spells_) {
      if (left < spell.hours) return published::at(spell.celsius);
      left -= spell.hours;
    }
    throw std::out_of_range("after the history");
  }
  [[nodiscard]] std::string describe(Units) const override { return "history"; }

 private:
  std::vector<Spell> spells_;
};

double equivalent_age(const Value& v) {
  constexpr double gas_constant = 8.31446261815324e-3;
  const double activation = v.has("activation_K") ? v.number("activation_K") * gas_constant : v.number("activation_kJ_mol");
  const std::vector<Spell> spells = history(v);
  Hours total{0};
  for (const Spell& spell : spells) total += Hours(spell.hours);
  const Instant end = later(Instant{}, total);
  const climate::AirSeries air(Past(spells), Instant{}, end);
  const finish::ClockIntegral clock(air, bare_arrhenius(activation), at(v.number("reference_C")), finish::Side::slow,
                                    finish::Estimate::expected);
  return clock.between(Instant{}, end).count();
}

/// The temperature at which the rate is the history's mean rate.
double mean_kinetic_temperature(const Value& v) {
  const Law law = bare_arrhenius(v.number("activation_kJ_mol"));
  double mean = 0;
  const std::vector<Spell> spells = history(v);
  for (const Spell& spell : spells) mean += finish::rate(law, at(spell.celsius), at(20)) / static_cast<double>(spells.size());
  double low = 0, high = 60;
  while (high - low > 1e-9) {
    const double middle = (low + high) / 2;
    (finish::rate(law, at(middle), at(20)) < mean ? low : high) = middle;
  }
  return low;
}

const Computations computations{
    {"time", time},
    {"pot_life_ratio", pot_life_ratio},
    {"induction", induction},
    {"water_drying_rate", water_drying_rate},
    {"reference_vapour_pressure", [](const Value&) { return climate::vapour_pressure(finish::reference_air).value() / 1000; }},
    {"dampest_at_margin", dampest_at_margin},
    {"equivalent_age", equivalent_age},
    {"mean_kinetic_temperature", mean_kinetic_temperature},
    {"activation_energy", [](const Value& v) { return law(v, Clock::cure).activation.value(); }},
    {"no_credit_below", [](const Value& v) { return law(v, Clock::drying).no_credit_below.value(); }},
    {"coldest_to_apply", [](const Value&) { return finish::Limits().coldest.value(); }},
    {"hottest_to_apply", [](const Value&) { return finish::Limits().hottest.value(); }},
    {"dew_point_margin", [](const Value&) { return finish::Limits().dew_point_margin.value() * 1.8; }},
};

class Kinetics : public testing::TestWithParam<Group> {};
TEST_P(Kinetics, Agrees) { check(GetParam(), computations); }
INSTANTIATE_TEST_SUITE_P(Published, Kinetics, testing::ValuesIn(group({"kinetics.csv"})), group_name);

}  // namespace
}  // namespace coatday::published
