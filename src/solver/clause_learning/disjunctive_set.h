#pragma once
// Uses of which no two may overlap.

#include <optional>

#include "solver/clause_learning/cumulative.h"
#include "solver/clause_learning/disjunctive.h"

namespace coatday::solver::clause_learning {

/// How long the use lasts at least, where its end depends on nothing but its begin.
[[nodiscard]] std::optional<Time> shortest(const Trail&, const Use&);

/// Among the uses that are certain and last a time that depends on nothing but their begin, each with its shortest length.
struct DisjunctiveSet {
  std::vector<Task> tasks;
  std::vector<Mapping> ends;                ///< of each, by its start
  std::vector<std::vector<char>> disjoint;  ///< by task and task: whether they may not overlap
};
[[nodiscard]] DisjunctiveSet find_disjunctive_set(const Trail&, const std::vector<Use>&, const std::vector<Resource>&);

/// Sets of them of which no two may overlap: a few, as long together as can be found quickly, the longest first.
[[nodiscard]] std::vector<std::vector<Task>> find_cliques(const DisjunctiveSet&);

}  // namespace coatday::solver::clause_learning
