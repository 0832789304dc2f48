#pragma once
// From a job to a plan.

#include "plan/plan.h"

namespace coatday::plan {

struct Request {
  Instant from;  ///< nothing that is not done starts before
};

/// Judges the job without planning: both faces, what goes over what, supports and places, methods, products against schedule and use.
/// Errors are what no plan can mend. The face entries are filled in so that a report can show the ledger.
[[nodiscard]] std::vector<Finding> judge(const Job&);

/// Plans the job from an instant. Never throws for anything in the job; a plan that cannot be is a Plan whose status says so. A job with
/// errors from judge() gives an infeasible plan with those findings.
[[nodiscard]] Plan make_plan(const Job&, const Request&);

/// The take-off alone: the faces of every part and their areas, loads not split.
[[nodiscard]] std::vector<FaceEntry> take_off(const Job&);

}  // namespace coatday::plan
