#pragma once
// How a pass goes about its work.

#include <vector>

namespace coatday::solver {

struct PassSettings {
  std::vector<double> key;    ///< by activity; of those whose predecessors are placed, the smallest goes first
  bool in_time = false;       ///< instead the one that could start first, and by key where several could
  double pull = 0;            ///< in time: so much of its key counts as if it could start later
  std::vector<int> firmness;  ///< by maximum lag with a remedy: so often its `from` is moved to keep the window before the remedy is used
  bool generous = false;      ///< reserve holds up to their limit as long as their end is open
  bool prefer_kept = false;   ///< rather at its kept start than earlier
  bool at_leisure = false;    ///< only the caller cuts it off, no clock
  int patience_each = 0;      ///< failures of one activity, and of all together, before the pass is given up
  int patience_all = 0;
};

}  // namespace coatday::solver
