#pragma once
// What went wrong, over many passes.

#include <map>
#include <utility>

#include "solver/base/bounds.h"

namespace coatday::solver {

class FailureCounts {
 public:
  void note(int activity) { ++failures_[activity]; }
  void note(int activity, Tag blocker) {
    if (blocker >= 0) ++blockers_[{activity, blocker}];
  }
  /// The activity that failed most often, or -1. And the tags that most often kept an activity from a place, worst first.
  [[nodiscard]] int worst() const;
  [[nodiscard]] Tags blockers(int activity) const;

 private:
  std::map<int, int> failures_;
  std::map<std::pair<int, Tag>, int> blockers_;
};

}  // namespace coatday::solver
