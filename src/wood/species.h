#pragma once
// Wood species, by their names in the Wood Handbook.

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace coatday::wood {

enum class Pores { open, closed, softwood };  ///< open pores may be filled; common practice, no source

/// Coefficients of dimensional change per 1 % of moisture content, 6 to 14 %.
/// Source: USDA FPL, Wood Handbook (FPL-GTR-190), table 13-5; species_table.cpp marks the rows that are from memory.
struct Species {
  std::string_view id;    ///< walnut-black, maple-sugar: the name in kebab case
  std::string_view name;  ///< "Walnut, black"
  double radial;          ///< C_R
  double tangential;      ///< C_T
  Pores pores;
};

[[nodiscard]] std::span<const Species> all_species();
/// By id, by the name in its natural order (black-walnut) or by a plain trade name (walnut, hard-maple, red-oak); null when unknown.
[[nodiscard]] const Species* find_species(std::string_view id);
/// All that find_species() takes, trade names first.
[[nodiscard]] std::vector<std::string> species_names();

}  // namespace coatday::wood
