#pragma once
// Uses of which no two may overlap.

#include <optional>

#include "solver/clause_learning/cumulative.h"
#include "solver/clause_learning/disjunctive.h"

namespace coatday::solver::learn {

/// How long the use lasts at least, where its end depends on nothing but its begin.
[[nodiscard]] std::optional<Time> shortest(const Trail&, const Use&);

/// Among the uses that are certain and last a time that depends on nothing but their begin, each with its shortest length.
struct Clashes {
  std::vector<Task> tasks;
  std::vector<Mapping> ends;             ///< of each, by its start
  std::vector<std::vector<char>> apart;  ///< by task and task: whether they may not overlap
};
[[nodiscard]] Clashes find_clashes(const Trail&, const std::vector<Use>&, const std::vector<Resource>&);

/// Sets of them of which no two may overlap: a few, as long together as can be found quickly, the longest first.
[[nodiscard]] std::vector<std::vector<Task>> find_cliques(const Clashes&);

}  // namespace coatday::solver::learn
