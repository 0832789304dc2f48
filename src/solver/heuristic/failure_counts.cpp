#include "solver/heuristic/failure_counts.h"

#include <algorithm>

namespace coatday::solver {

int FailureCounts::worst() const {
  int worst = -1, most = 0;
  for (const auto& [activity, count] : failures_) {
    if (count <= most) continue;
    worst = activity;
    most = count;
  }
  return worst;
}

Tags FailureCounts::blockers(int activity) const {
  std::vector<std::pair<int, Tag>> counted;
  for (const auto& [key, count] : blockers_) {
    if (key.first == activity) counted.emplace_back(-count, key.second);
  }
  std::sort(counted.begin(), counted.end());
  Tags result;
  for (const auto& [count, tag] : counted) result.push_back(tag);
  return result;
}

}  // namespace coatday::solver
