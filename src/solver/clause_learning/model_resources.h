#pragma once
// Demands of activities and holds on resources over time.

#include "solver/clause_learning/model_orders.h"
#include "solver/clause_learning/model_variables.h"

namespace coatday::solver::clause_learning {

/// Adds the resources, and the orders of what may not overlap on them. Returns, by hold and choice, the question whether it is chosen; -1
/// for an only choice.
[[nodiscard]] std::vector<std::vector<Var>> add_resources(ModelVariables&, ModelOrders&);

}  // namespace coatday::solver::clause_learning
