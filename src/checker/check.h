#pragma once
// Judges a plan with none of the planner's code. It integrates the clocks anew, row by row, and trusts nothing but the job's own records.

#include "job/plan.h"

namespace coatday::checker {

/// A breach of what the plan promises.
struct Breach {
  std::string code;  ///< "too-early", "window-missed", "face-left-behind", "person-twice", ...
  std::string message;
};

/// Everything wrong with a feasible plan; empty when it is sound.
[[nodiscard]] std::vector<Breach> check(const job::Plan&, const job::Job&);

}  // namespace coatday::checker
