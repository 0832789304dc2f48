#pragma once
// What a finish does to the flow of moisture, from how well it kept moisture out of test panels.

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "wood/diffusion.h"

namespace coatday::wood {

/// How far a row was compared with its table.
enum class Verification : std::uint8_t {
  compared,         ///< on a copy of the table or of a part of it
  partly_compared,  ///< one exposure compared, the others from memory
  from_memory,
  conflicting,  ///< two readings disagree: kept for the record, never used
};

/// Moisture-excluding effectiveness in whole percent: 100 (1 - gain of a coated panel / gain of a bare one).
/// Source: Wood Handbook (FPL-GTR-190) table 16-3, its data from FPL Research Paper 462 (1985).
struct Exclusion {
  std::string_view finish;
  int coats;
  std::array<int, 3> percent;  ///< after exposure_days; unknown_exclusion where it is not known
  Verification verification;
};
inline constexpr int unknown_exclusion = -1;
inline constexpr std::array<double, 3> exposure_days{1, 7, 14};
[[nodiscard]] std::span<const Exclusion> exclusion_table();

/// The exclusion, in percent, of a film on the test's panel: ponderosa pine sapwood, 3 x 5 x 5/8 in (from memory), brought to rest at 30 % RH
/// and put into 90 % RH, both at 80 °F; coated all over, the longest side along the grain (judgement). All six faces count: the share that is
/// still to be gained is the product of three sheets' (Newman's rule). `diffusivity` across the grain, at the test's temperature; `film`
/// is what the finish adds to still air.
[[nodiscard]] double exclusion_of(FilmResistance film, Diffusivity, double days);
/// Its inverse, by halving, from 1e4 to 1e12 s/m.
[[nodiscard]] FilmResistance film_that_excludes(double percent, double days, Diffusivity);

/// The index of exposure_days to which a row's film is fitted. The 7th day is best: on the 14th, weak films are near 0, where whole percents
/// are too coarse; on the 1st, the first hours near the surface still count. The 1st or the 14th where the 7th is below 5 % or unknown.
/// Nothing where no day is usable: the film counts as none.
[[nodiscard]] std::optional<std::size_t> fitted_exposure(const Exclusion&);

/// A finish as the table has it.
struct Film {
  FilmResistance resistance;  ///< added to still air, at the test's temperature
  Verification verification = Verification::compared;
  bool beyond = false;  ///< more coats than were measured: the resistance of the most that were
};
/// By coats, between measured counts linearly, 0 for none; no such finish: nothing. `at_test` is the test panel's diffusivity, the middle of the
/// band at the test's temperature whatever the board's own. Some milliseconds of processor time: keep what it returns.
[[nodiscard]] std::optional<Film> film_of(std::string_view finish, int coats, Diffusivity at_test);

/// The row of the table that stands for a family of finishes (`family` in schedules/products.yaml).
struct FilmClass {
  std::string_view finish;  ///< of the table; empty: it leaves no film on the face that counts
  bool nearest = false;     ///< no data: the nearest class, by judgement
};
/// Nothing for a family that is unknown or not for wood.
[[nodiscard]] std::optional<FilmClass> film_class(std::string_view family);

}  // namespace coatday::wood
