#pragma once
// Lags, remedies of missed maximum lags, and shared set-ups.

#include "solver/clause_learning/model_variables.h"

namespace coatday::solver::clause_learning {

/// Minimum lags and maximum lags. A remedy takes part exactly when a window that it is for is missed.
void add_lags(ModelVariables&);
/// An activity that shares a set-up has a partner of its family that ends in time before it.
void add_partners(ModelVariables&);

}  // namespace coatday::solver::clause_learning
