#pragma once
// What the search makes small.

#include "solver/clause_learning/model_variables.h"

namespace coatday::solver::clause_learning {

struct Objective {
  Var ready = -1;            ///< -1: there are no goals
  Var lateness = -1;         ///< in units; -1: nothing can be late
  double lateness_unit = 1;  ///< lateness of one unit
  /// Whether lateness is always a whole number of units. If not, the units only bound it from below.
  bool exact_lateness = true;
};
[[nodiscard]] Objective add_goals(ModelVariables&);

}  // namespace coatday::solver::clause_learning
