#include "solver/lower_bounds/open_time.h"

#include <algorithm>

#include "solver/base/calendar.h"

namespace coatday::solver {

OpenTime::OpenTime(Intervals intervals) : intervals_(merged(std::move(intervals))) {
  std::int64_t before = 0;
  for (const Interval& i : intervals_) {
    before_.push_back(before);
    before += i.end - i.begin;
  }
}

std::int64_t OpenTime::until(Time t) const {
  const auto next = std::upper_bound(intervals_.begin(), intervals_.end(), t, [](Time time, const Interval& i) { return time < i.begin; });
  if (next == intervals_.begin()) return 0;
  const auto last = std::prev(next);
  return before_[static_cast<std::size_t>(last - intervals_.begin())] + std::min(t, last->end) - last->begin;
}

}  // namespace coatday::solver
