#pragma once
// Sets of uses of which no two may overlap.

#include "solver/learn/cumulative.h"
#include "solver/learn/disjunctive.h"

namespace coatday::solver::learn {

using Cliques = std::vector<std::vector<Task>>;

/// Among the uses that are certain and last a time that depends on nothing but their begin: a few sets, as long together as can be found
/// quickly, each with its shortest lengths.
[[nodiscard]] Cliques find_cliques(const Trail&, const std::vector<Use>&, const std::vector<Resource>&);

}  // namespace coatday::solver::learn
