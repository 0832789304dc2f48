#pragma once
// Spans of activities that may not overlap.

#include "solver/clause_learning/model_variables.h"

namespace coatday::solver::clause_learning {

void add_exclusions(ModelVariables&);

}  // namespace coatday::solver::clause_learning
