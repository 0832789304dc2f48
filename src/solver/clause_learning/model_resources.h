#pragma once
// What activities demand and what holds take, of resources over time.

#include "solver/clause_learning/model_orders.h"
#include "solver/clause_learning/model_variables.h"

namespace coatday::solver::clause_learning {

/// Adds the resources, and the orders of what may not overlap on them. By hold and choice: the question whether it is chosen; -1 where it is
/// the only choice.
[[nodiscard]] std::vector<std::vector<Var>> add_resources(ModelVariables&, ModelOrders&);

}  // namespace coatday::solver::clause_learning
