#pragma once
// The film that a step asks for, and what follows from it: how long it dries and how much finish it takes.

#include <optional>
#include <string>

#include "finish/schedule.h"

namespace coatday::finish {

/// The hours of a coat's drying clock against those of its record, on each side of what is known.
struct DryingFactor {
  double fast = 1, expected = 1, slow = 1;

  [[nodiscard]] double on(Estimate) const;
  auto operator<=>(const DryingFactor&) const = default;
};

/// Drying goes with (wet film / the record's)^n. n = 1 for water-based films up to 150 µm wet; 1.5 to 2, here 1.75, for oxidising ones; 1 to 2,
/// here 1.5, where solvent evaporates: at first from the surface, then through the film. All judgement. No law is known for the others.
struct FilmLaw {
  double fast, expected, slow;
  std::optional<Micrometres> thickest;
};
[[nodiscard]] std::optional<FilmLaw> film_law(Mechanism);

/// A film from half to twice that of the record is within any of these laws (judgement).
inline constexpr double thinnest_share = 0.5, thickest_share = 2;

/// The wet film, thinner included, that the record's times are for: as stated, or that of its own spreading rate.
[[nodiscard]] Micrometres film_of_times(const Product&);
/// The wet film of the step, thinner included. None where the step gives no film, or a dry film of a product without volume solids.
[[nodiscard]] std::optional<Micrometres> wet_film(const Step&, const Product&);

/// Why nothing is known of a film as thick as the step asks.
[[nodiscard]] std::optional<std::string> film_refused(const Step&, const Product&, Units = Units::metric);
/// 1 where the step gives no film.
[[nodiscard]] DryingFactor drying_factor(const Step&, const Product&);
/// m² that a litre from the can covers in this step, its thinner not counted.
[[nodiscard]] SquareMetresPerLitre spreading_rate(const Step&, const Product&);

/// The hours to a stage, with drying multiplied. A thicker film reaches the stages of cure later by the same delay as its last drying stage.
/// A thinner film reaches no stage of cure earlier, except the end of its window. So every stage is on the safe side.
[[nodiscard]] Hours hours_of_film(const StageHours&, Stage, double factor);

}  // namespace coatday::finish
