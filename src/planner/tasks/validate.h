#pragma once
// A job judged before anything is planned.

#include <vector>

#include "job/plan.h"

namespace coatday::planner {

/// Judges the job without planning: both faces, what goes over what, supports and places, methods, products against schedule and use.
/// Errors are what no plan can mend. The face entries are filled in so that a report can show the ledger.
[[nodiscard]] std::vector<job::Finding> validate(const job::Job&);

/// The take-off alone: the faces of every part and their areas, loads not split.
[[nodiscard]] std::vector<job::FaceEntry> take_off(const job::Job&);

}  // namespace coatday::planner
