#pragma once
// Uses that may not overlap.

#include <optional>

#include "solver/clause_learning/cumulative.h"
#include "solver/clause_learning/disjunctive.h"

namespace coatday::solver::clause_learning {

/// How long the use lasts at least. Returns nothing if its end depends on more than its begin.
[[nodiscard]] std::optional<Time> shortest(const Trail&, const Use&);

/// The uses that are certain and have an end that depends only on their begin, as tasks with their shortest length.
struct DisjunctiveSet {
  std::vector<Task> tasks;
  std::vector<Mapping> ends;                ///< of each task, as a function of its start
  std::vector<std::vector<char>> disjoint;  ///< by task and task: whether the two may not overlap
};
[[nodiscard]] DisjunctiveSet find_disjunctive_set(const Trail&, const std::vector<Use>&, const std::vector<Resource>&);

/// A few sets of tasks that may not overlap, with as much total length as a quick search finds, the longest first.
[[nodiscard]] std::vector<std::vector<Task>> find_cliques(const DisjunctiveSet&);

}  // namespace coatday::solver::clause_learning
