#pragma once
// How a pass works.

#include <vector>

#include "solver/base/problem.h"

namespace coatday::solver {

struct PassSettings {
  std::vector<double> key;    ///< by activity; of those with all predecessors placed, the smallest key goes first
  bool in_time = false;       ///< instead, the activity that can start first goes first; keys decide between equals
  double pull = 0;            ///< in time: this part of its key is added to its start
  std::vector<int> firmness;  ///< by maximum lag with a remedy: how often its `from` moves before the remedy is used
  bool generous = false;      ///< reserve holds up to their limit while their end is open
  std::vector<Time> wanted;   ///< by activity: it starts there if it can; `unreachable`: nothing is wanted. Empty: of no activity
  bool near = false;          ///< if it cannot start when it is wanted, it rather starts after that than before
  bool at_leisure = false;    ///< only the caller may stop the pass, not the clock
  int patience_each = 0;      ///< failures of one activity before the pass gives up
  int patience_all = 0;       ///< failures of all together before the pass gives up
};

}  // namespace coatday::solver
