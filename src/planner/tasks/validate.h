#pragma once
// A job is judged before anybody plans it.

#include <vector>

#include "job/plan.h"

namespace coatday::planner {

/// Judges the job without planning: both faces, what goes over what, supports and places, methods, products against schedule and use.
/// No plan can mend an error.
[[nodiscard]] std::vector<job::Finding> validate(const job::Job&);

/// The take-off alone: the faces of every part and their areas, loads not split.
[[nodiscard]] std::vector<job::FaceEntry> take_off(const job::Job&);

}  // namespace coatday::planner
