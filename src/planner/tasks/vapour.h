#pragma once
// Coats and the fresh air that their vapour takes.
//
// The planner assumes that all of a coat's solvent leaves while it is put on, and that the coat needs that airflow until it is tack-free. That is
// more than can leave at any moment (judgement, on the safe side; most of it does leave early). Coats that are wet at the same time add up.

#include "finish/coverage.h"
#include "job/plan.h"
#include "planner/tasks/effort.h"

namespace coatday::planner {

/// A pause of more than this after an item would average its vapour over too long (judgement).
inline constexpr Minutes longest_pause{15};

/// Airflow is counted in so many parts of what the shop has.
inline constexpr int airflow_parts = 1000;

/// Of a coat of so many litres from the can. Nothing where it has no solvent. Airflow and pauses come later: they follow from the time at it.
[[nodiscard]] std::optional<job::Vapour> vapour_of(const finish::Product&, Litres from_can, double thinner_share, const shop::Ventilation&);

/// The time for a coat, long enough for the shop's exhaust. Writes airflow and pauses into the vapour.
[[nodiscard]] Effort vented_effort(std::optional<job::Vapour>&, const finish::Product&, finish::Method, SquareMetres, int items,
                                   const shop::Shop&, const Mixing&);

/// The airflow of a coat that is put on within this time.
[[nodiscard]] CubicMetresPerHour airflow_within(const job::Vapour&, Hours);

/// Parts of the shop's airflow, rounded up, all of it at the most.
[[nodiscard]] int parts_of_airflow(const job::Vapour&, CubicMetresPerHour shop);

}  // namespace coatday::planner
