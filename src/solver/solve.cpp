#include "solver/solve.h"

#include "solver/contradiction.h"
#include "solver/improvement.h"

namespace coatday::solver {

Outcome solve(const Problem& problem, const Limits& limits) {
  const Network network(problem);
  if (auto contradiction = over_capacity(network)) return std::move(*contradiction);
  Bounds bounds(network);
  if (!bounds.propagate()) return explain(network, bounds);
  return Improvement(network, bounds, limits).run();
}

}  // namespace coatday::solver
