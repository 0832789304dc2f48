#include "finish/law.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "climate/psychrometrics.h"

namespace coatday::finish {
namespace {

using climate::Air;
using Kind = Law::Kind;

constexpr double gas_constant = 8.31446261815324e-3;  // kJ/(mol K)

/// One class default. A range's low end stands as the floor where no floor is stated.
struct DefaultLaw {
  Mechanism mechanism;
  Clock clock;
  Law law;
};

constexpr Law arrhenius(double activation, double no_credit_below, double coldest, double hottest, std::string_view source) {
  Law law;
  law.activation = KilojoulesPerMole(activation);
  law.no_credit_below = Celsius(no_credit_below);
  law.coldest = Celsius(coldest);
  law.hottest = Celsius(hottest);
  law.source = source;
  return law;
}

constexpr Law between(double least, double most, Law law) {
  law.least = least;
  law.most = most;
  return law;
}

constexpr Law after_recoat(Law law) {
  law.cure_starts_at_recoat = true;
  return law;
}

constexpr Law vapour_deficit(double wet_bulb_share, std::string_view source) {
  Law law = arrhenius(0, 10, 10, 32, source);
  law.kind = Kind::vapour_deficit;
  law.wet_bulb_share = wet_bulb_share;
  law.driest = RelativeHumidity(0.20);
  law.dampest = RelativeHumidity(0.85);
  return law;
}

constexpr Law vapour_pressure(double no_credit_below, double hottest, std::string_view source) {
  Law law = arrhenius(0, no_credit_below, no_credit_below, hottest, source);
  law.kind = Kind::vapour_pressure;
  law.driest = RelativeHumidity(0.30);
  law.dampest = RelativeHumidity(0.85);
  return law;
}

constexpr Law water_drying =
    between(0, 1,
            vapour_deficit(0.5,
                           "evaporation into the air's vapour deficit; film half-way to the wet bulb (0 to 1, judgement); "
                           "10 °C: Wood Handbook FPL-GTR-190 ch. 16"));
constexpr Law water_cure = after_recoat(
    between(30, 70, arrhenius(50, 10, 15, 30, "50 ± 20 kJ/mol, 15 to 30 °C, no credit below 10 °C, after the water has left: judgement")));
constexpr Law alcohol =
    between(20, 43, arrhenius(27, 10, 10, 32, "evaporation with self-cooling, 27 kJ/mol (20 to 43), 10 to 32 °C: judgement"));
constexpr Law lacquer =
    between(32, 45, arrhenius(37, 5, 5, 32, "evaporation with self-cooling, 37 kJ/mol (32 to 45), 5 to 32 °C: judgement"));
constexpr Law flash_off =
    between(42, 52, arrhenius(47, 10, 10, 32, "evaporation of white spirit, 47 kJ/mol (42 to 52), 10 to 32 °C: judgement"));
constexpr Law oxidation = between(35, 70, arrhenius(50, 7, 10, 32, "50 kJ/mol (35 to 70), 10 to 32 °C, no credit below 7 °C: judgement"));
constexpr Law epoxy = between(42, 63,
                              arrhenius(57, 10, 16, 38,
                                        "57 kJ/mol (42 to 63): amine and epoxy 55 to 60 kJ/mol, Thermochim Acta 447:167 (2006); 16 to 38 "
                                        "°C, no credit below 10 °C: judgement"));
constexpr Law polyurethane =
    between(44, 55,
            arrhenius(50, 10, 16, 38,
                      "50 kJ/mol (44 to 55): doubling each 10 °C, UFGS 09971 par. 3.7.1.3; 16 to 38 °C, no credit below 10 °C: judgement"));
constexpr Law acid =
    between(45, 85, arrhenius(65, 15, 18, 30, "65 ± 20 kJ/mol, 18 to 30 °C, no credit below 15 °C: judgement, unsupported"));
constexpr Law moisture = vapour_pressure(10, 32, "proportional to the air's vapour pressure, 10 to 32 °C, 30 to 85 % RH: judgement");
constexpr Law thin_bond = vapour_pressure(15, 30, "proportional to the air's vapour pressure, 15 to 30 °C, 30 to 85 % RH: judgement");

constexpr DefaultLaw defaults[] = {
    {Mechanism::water, Clock::drying, water_drying},
    {Mechanism::water, Clock::cure, water_cure},
    {Mechanism::alcohol, Clock::drying, alcohol},
    {Mechanism::alcohol, Clock::cure, alcohol},
    {Mechanism::lacquer_thinner, Clock::drying, lacquer},
    {Mechanism::lacquer_thinner, Clock::cure, lacquer},
    {Mechanism::white_spirit, Clock::drying, flash_off},
    {Mechanism::white_spirit, Clock::cure, oxidation},
    {Mechanism::oxidative, Clock::drying, oxidation},
    {Mechanism::oxidative, Clock::cure, oxidation},
    {Mechanism::epoxy, Clock::drying, epoxy},
    {Mechanism::epoxy, Clock::cure, epoxy},
    {Mechanism::polyurethane_two_part, Clock::drying, polyurethane},
    {Mechanism::polyurethane_two_part, Clock::cure, polyurethane},
    {Mechanism::acid_cured, Clock::drying, acid},
    {Mechanism::acid_cured, Clock::cure, acid},
    {Mechanism::moisture_cure, Clock::drying, moisture},
    {Mechanism::moisture_cure, Clock::cure, moisture},
    {Mechanism::cyanoacrylate, Clock::drying, thin_bond},
    {Mechanism::cyanoacrylate, Clock::cure, thin_bond},
    {Mechanism::heat_cured, Clock::drying, flash_off},  // to handle; full cure comes from a bake alone
};

/// The law without floors and caps, in a unit of its own.
double bare(const Law& law, const Air& air) {
  switch (law.kind) {
    case Kind::arrhenius:  // equivalent age, as in ASTM C1074
      return std::exp(law.activation.value() / gas_constant * (1 / reference_air.temperature.kelvin() - 1 / air.temperature.kelvin()));
    case Kind::vapour_deficit: {
      const Kelvins cooling = law.wet_bulb_share > 0 ? law.wet_bulb_share * (air.temperature - climate::wet_bulb(air)) : Kelvins(0);
      const Pascals at_film = climate::saturation_pressure(air.temperature - cooling);
      return std::max(0.0, (at_film - climate::vapour_pressure(air)).value());
    }
    case Kind::vapour_pressure:
      return climate::vapour_pressure(air).value();
  }
  return 0;
}

bool stands_still(const Law& law, const Air& air) {
  if (air.temperature < law.no_credit_below) return true;
  if (law.kind == Kind::vapour_deficit) return air.humidity > law.dampest;
  return law.kind == Kind::vapour_pressure && air.humidity < law.driest;
}

/// Air at the edge of the law's range where this air is beyond it.
Air within_range(const Law& law, const Air& air) {
  Air capped{std::min(air.temperature, law.hottest), air.humidity};
  if (law.kind == Kind::vapour_deficit) capped.humidity = std::max(air.humidity, law.driest);
  if (law.kind == Kind::vapour_pressure) capped.humidity = std::min(air.humidity, law.dampest);
  return capped;
}

}  // namespace

std::optional<Law> default_law(Mechanism mechanism, Clock clock) {
  const auto* row = std::find_if(std::begin(defaults), std::end(defaults),
                                 [&](const DefaultLaw& r) { return r.mechanism == mechanism && r.clock == clock; });
  if (row == std::end(defaults)) return std::nullopt;
  return row->law;
}

Rate::Rate(const Law& law, const Air& reference, Side side) : law_(law), side_(side), at_reference_(bare(law, reference)) {}

double Rate::operator()(const Air& air) const {
  if (!(at_reference_ > 0)) return 0;
  if (side_ == Side::fast) return std::max(1.0, law_.rate_factor) * bare(law_, air) / at_reference_;
  return stands_still(law_, air) ? 0 : law_.rate_factor * bare(law_, within_range(law_, air)) / at_reference_;
}

double uncertainty(const Air& air) {
  const bool usual_temperature = air.temperature >= Celsius(15) && air.temperature <= Celsius(30);
  const bool usual_humidity = air.humidity >= RelativeHumidity(0.30) && air.humidity <= RelativeHumidity(0.70);
  return usual_temperature && usual_humidity ? 1.4 : 2;
}

double weight(Estimate estimate, const Air& air) {
  if (estimate == Estimate::expected) return 1;
  return estimate == Estimate::slow ? 1 / uncertainty(air) : uncertainty(air);
}

Law with(Law law, double parameter) {
  if (law.kind == Kind::arrhenius) law.activation = KilojoulesPerMole(parameter);
  if (law.kind == Kind::vapour_deficit) law.wet_bulb_share = parameter;
  return law;
}

std::optional<std::string> beyond(const Law& law, const Air& air, Units units) {
  if (air.temperature < law.coldest || air.temperature > law.hottest) {
    return fmt::format("{} is {} the law's range, {} to {}", format_temperature(air.temperature, units),
                       air.temperature < law.coldest ? "below" : "above", format_temperature(law.coldest, units),
                       format_temperature(law.hottest, units));
  }
  const bool needs_humidity = law.kind != Kind::arrhenius;
  if (needs_humidity && (air.humidity < law.driest || air.humidity > law.dampest)) {
    return fmt::format("{} is {} the law's range, {} to {}", format_humidity(air.humidity),
                       air.humidity < law.driest ? "drier than" : "damper than", format_humidity(law.driest), format_humidity(law.dampest));
  }
  return std::nullopt;
}

}  // namespace coatday::finish
