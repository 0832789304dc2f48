#pragma once
// Coats and the fresh air that their vapour takes.
//
// All of a coat's solvent is taken to leave while it is put on, and the coat to need that airflow until it is tack-free: more than can leave at
// any moment, since no bit gives off its solvent twice (judgement, on the safe side; most of it does leave early). Coats that are wet at the
// same time add up.

#include "finish/coverage.h"
#include "job/plan.h"
#include "planner/tasks/effort.h"

namespace coatday::planner {

/// A pause of more than this after an item would average its vapour over too long (judgement).
inline constexpr Minutes longest_pause{15};

/// Airflow is counted in so many parts of what the shop has.
inline constexpr int airflow_parts = 1000;

/// Of a coat of so many litres from the can; nothing where no solvent is in it. Without airflow and pauses, which follow from the time at it.
[[nodiscard]] std::optional<job::Vapour> vapour_of(const finish::Product&, Litres from_can, double thinner_share, const shop::Ventilation&);

/// The time for a coat, long enough for the shop's exhaust; what that makes of its vapour is written into it.
[[nodiscard]] Effort vented_effort(std::optional<job::Vapour>&, const finish::Product&, finish::Method, SquareMetres, int items,
                                   const shop::Shop&, const Mixing&);

/// The airflow of a coat that is put on within this time.
[[nodiscard]] CubicMetresPerHour airflow_within(const job::Vapour&, Hours);

/// Parts of the shop's airflow, rounded up, all of it at the most.
[[nodiscard]] int parts_of_airflow(const job::Vapour&, CubicMetresPerHour shop);

}  // namespace coatday::planner
