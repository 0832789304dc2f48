#include "solver/base/calendar.h"

#include <algorithm>

namespace coatday::solver {

Time next_allowed(const Intervals& intervals, Time t) {
  const auto next = std::upper_bound(intervals.begin(), intervals.end(), t, [](Time time, const Interval& i) { return time < i.end; });
  return next == intervals.end() ? unreachable : std::max(t, next->begin);
}

Time previous_allowed(const Intervals& intervals, Time t) {
  const auto next = std::upper_bound(intervals.begin(), intervals.end(), t, [](Time time, const Interval& i) { return time < i.begin; });
  return next == intervals.begin() ? -unreachable : std::min(t, std::prev(next)->end - 1);
}

Intervals merged(Intervals intervals) {
  std::sort(intervals.begin(), intervals.end(), [](const Interval& a, const Interval& b) { return a.begin < b.begin; });
  Intervals result;
  for (const Interval& next : intervals) {
    if (next.begin >= next.end) continue;
    if (!result.empty() && next.begin <= result.back().end) {
      result.back().end = std::max(result.back().end, next.end);
    } else {
      result.push_back(next);
    }
  }
  return result;
}

}  // namespace coatday::solver
