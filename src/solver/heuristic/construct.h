#pragma once
// One pass of serial schedule generation with unscheduling: activities are placed one by one, each at its earliest; where that breaks a lag
// or finds no room, what is in the way is taken out again and comes back later.

#include <map>
#include <optional>

#include "solver/base/bounds.h"
#include "solver/heuristic/budget.h"

namespace coatday::solver {

/// How a pass goes about it.
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

/// What went wrong, over many passes.
class FailureCounts {
 public:
  void note(int activity) { ++failures_[activity]; }
  void note(int activity, Tag blocker) {
    if (blocker >= 0) ++blockers_[{activity, blocker}];
  }
  /// The activity that failed most often, or -1; and the tags that most often stood in its way, worst first.
  [[nodiscard]] int worst() const;
  [[nodiscard]] Tags blockers(int activity) const;

 private:
  std::map<int, int> failures_;
  std::map<std::pair<int, Tag>, int> blockers_;
};

struct Constructed {
  std::optional<Schedule> schedule;
  int stuck = -1;  ///< where there is none: the activity it was given up at
};

[[nodiscard]] Constructed construct(const Network&, const Bounds&, const PassSettings&, const Budget&, FailureCounts&);

}  // namespace coatday::solver
