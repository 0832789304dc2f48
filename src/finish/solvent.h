#pragma once
// Solvents that finishes are carried in: how much vapour a litre gives, and how much of it in air can burn.

#include <span>
#include <string>
#include <string_view>

#include "quantity/quantity.h"

namespace coatday::finish {

struct Solvent {
  std::string id;
  std::string name;
  CubicMetresPerLitre vapour;  ///< at 70 °F (21 °C), of the liquid
  double lower_limit = 0;      ///< the lower explosive limit: a fraction of the air, by volume
  GramsPerLitre density;
  std::string source;
};

/// 29 CFR 1910.94(c)(6)(ii) Table G-11, from memory; glycol ethers by their chemical names. Densities: handbook values, from memory.
[[nodiscard]] std::span<const Solvent> solvents();
/// By id, or null.
[[nodiscard]] const Solvent* solvent(std::string_view id);

/// Shares of the lower explosive limit that rules of law name.
inline constexpr double federal_limit =
    0.25;  ///< 29 CFR 1910.94(c)(6)(ii): "at least 25 percent of the lower explosive limit" (from memory)
inline constexpr double california_limit = 0.20;  ///< 8 CCR 5153(d): "less than 20 percent of their lower explosive limit" (seen)

/// Air that thins the vapour of a litre to this share of the lower explosive limit: (1 - LEL) vapour / (LEL share).
/// Source: 29 CFR 1910.94(c)(6)(ii), 4 (100 - LEL) vapour / LEL for a share of 25 %; its example, toluene, gives 8564 ft3 a gallon.
[[nodiscard]] CubicMetresPerLitre dilution_air(const Solvent&, double share);

}  // namespace coatday::finish
