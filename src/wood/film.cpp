#include "wood/film.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace coatday::wood {
namespace {

constexpr double inch = 0.0254;
constexpr double least_informative = 5;  // percent; the table is in whole ones

/// The share that a sheet, open on both faces, has still to gain. Half of it, with its middle sealed.
double left_to_gain(Metres thickness, Diffusivity diffusivity, FilmResistance film, double days) {
  Slab half(thickness / 2, MoistureContent(0));
  const FilmResistance sealed(std::numeric_limits<double>::infinity());
  half.advance({diffusivity, {MoistureContent(1), sealed}, {MoistureContent(1), film}}, Seconds(86'400 * days));
  return 1 - half.mean().value();
}

double gain_of_panel(FilmResistance film, Diffusivity across, double days) {
  const FilmResistance all = still_air + film;
  return 1 - left_to_gain(Metres(5.0 / 8 * inch), across, all, days) * left_to_gain(Metres(3 * inch), across, all, days) *
                 left_to_gain(Metres(5 * inch), across * along_over_across, all, days);
}

double resistance_of(const Exclusion& row, Diffusivity at_test) {
  const auto day = fitted_exposure(row);
  return day ? film_that_excludes(row.percent[*day], exposure_days[*day], at_test).value() : 0;
}

struct FamilyRow {
  std::string_view family;
  FilmClass film;
};
constexpr std::string_view urethane = "Urethane varnish (oil-modified)", lacquer = "Nitrocellulose lacquer", linseed = "Linseed oil",
                           clear_two_part = "Polyurethane finish, clear (two components)", primer = "Acrylic latex house primer paint";
constexpr std::array families{
    FamilyRow{"shellac", {"Shellac"}},
    FamilyRow{"oil-varnish", {urethane}},
    FamilyRow{"lacquer", {lacquer}},
    FamilyRow{"lacquer-sealer", {lacquer, true}},
    FamilyRow{"two-part-polyurethane", {clear_two_part}},
    FamilyRow{"moisture-cure-polyurethane", {clear_two_part, true}},
    FamilyRow{"acid-cured", {urethane, true}},
    FamilyRow{"water-clear", {primer, true}},
    FamilyRow{"water-primer", {primer}},
    FamilyRow{"water-enamel", {"Acrylic latex flat house paint", true}},
    FamilyRow{"alkyd-enamel", {"Enamel paint, gloss (soya alkyd; interior)"}},
    FamilyRow{"oil", {linseed}},
    FamilyRow{"hardwax", {linseed, true}},
    FamilyRow{"wax", {"Furniture paste wax"}},
    FamilyRow{"oil-stain", {"Semitransparent oil-based stain (commercial)"}},
    FamilyRow{"water-stain", {"", true}},
    FamilyRow{"dye", {"", true}},
    FamilyRow{"oil-filler", {"", true}},
    FamilyRow{"water-filler", {"", true}},
    FamilyRow{"plain-water", {""}},
    FamilyRow{"epoxy-resin", {"", true}},    // in knots alone
    FamilyRow{"cyanoacrylate", {"", true}},  // in cracks alone
};

}  // namespace

double exclusion_of(FilmResistance film, Diffusivity across, double days) {
  return 100 * (1 - gain_of_panel(film, across, days) / gain_of_panel(no_film, across, days));
}

FilmResistance film_that_excludes(double percent, double days, Diffusivity across) {
  const double gained = (1 - percent / 100) * gain_of_panel(no_film, across, days);
  double low = 4, high = 12;  // powers of ten
  while (high - low > 1e-3) {
    const double middle = (low + high) / 2;
    (gain_of_panel(FilmResistance(std::pow(10, middle)), across, days) > gained ? low : high) = middle;
  }
  return FilmResistance(std::pow(10, (low + high) / 2));
}

std::optional<std::size_t> fitted_exposure(const Exclusion& row) {
  for (const std::size_t day : {1U, 0U, 2U}) {
    if (row.percent[day] >= least_informative) return day;
  }
  return std::nullopt;
}

std::optional<Film> film_of(std::string_view finish, int coats, Diffusivity at_test) {
  const Exclusion* below = nullptr;
  const Exclusion* above = nullptr;
  for (const Exclusion& row : exclusion_table()) {
    if (row.finish != finish || row.verification == Verification::conflicting) continue;
    if (row.coats <= coats && (below == nullptr || row.coats > below->coats)) below = &row;
    if (row.coats >= coats && (above == nullptr || row.coats < above->coats)) above = &row;
  }
  if (below == nullptr && above == nullptr) return std::nullopt;
  if (coats <= 0) return Film{no_film};
  if (above == nullptr) return Film{FilmResistance(resistance_of(*below, at_test)), below->verification, true};
  const double at_above = resistance_of(*above, at_test), at_below = below == nullptr ? 0 : resistance_of(*below, at_test);
  const int from = below == nullptr ? 0 : below->coats;
  const double share = above->coats == from ? 1 : static_cast<double>(coats - from) / (above->coats - from);
  const Verification weaker = below == nullptr ? above->verification : std::max(below->verification, above->verification);
  return Film{FilmResistance(at_below + share * (at_above - at_below)), weaker};
}

std::optional<FilmClass> film_class(std::string_view family) {
  const auto row = std::find_if(families.begin(), families.end(), [family](const FamilyRow& each) { return each.family == family; });
  return row == families.end() ? std::nullopt : std::optional(row->film);
}

}  // namespace coatday::wood
