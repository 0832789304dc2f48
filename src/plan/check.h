#pragma once
// Judges a plan with none of the planner's code: it integrates the clocks anew, row by row, and trusts nothing but the job's own records.

#include "plan/plan.h"

namespace coatday::plan {

/// A breach of what the plan promises.
struct Breach {
  std::string code;  ///< "too-early", "window-missed", "face-left-behind", "person-twice", ...
  std::string message;
};

/// Everything wrong with a feasible plan; empty when it is sound.
[[nodiscard]] std::vector<Breach> check(const Plan&, const Job&);

}  // namespace coatday::plan
