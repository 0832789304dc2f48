#include "solver/base/profile.h"

#include <algorithm>

namespace coatday::solver {

std::size_t Profile::covering(Time t) const {
  return static_cast<std::size_t>(
      std::upper_bound(steps_.begin(), steps_.end(), t, [](Time time, const Step& step) { return time < step.from; }) - steps_.begin());
}

std::size_t Profile::split(Time t) {
  const std::size_t after = covering(t);
  if (after > 0 && steps_[after - 1].from == t) return after - 1;
  steps_.insert(steps_.begin() + static_cast<std::ptrdiff_t>(after), Step{t, after > 0 ? steps_[after - 1].level : 0});
  return after;
}

void Profile::join(std::size_t index) {
  if (index >= steps_.size()) return;
  if (steps_[index].level == (index > 0 ? steps_[index - 1].level : 0)) steps_.erase(steps_.begin() + static_cast<std::ptrdiff_t>(index));
}

void Profile::add(Time begin, Time end, int amount) {
  if (begin >= end || amount == 0) return;
  const std::size_t first = split(begin);
  const std::size_t last = split(end);
  for (std::size_t i = first; i < last; ++i) steps_[i].level += amount;
  join(last);
  join(first);
}

std::optional<Interval> Profile::first_above(int level, Time begin, Time end) const {
  if (begin >= end || steps_.empty()) return std::nullopt;
  std::size_t i = covering(begin);
  if (i > 0) --i;
  for (; i < steps_.size() && steps_[i].from < end; ++i) {
    if (steps_[i].level <= level) continue;
    const Time from = steps_[i].from;
    while (i < steps_.size() && steps_[i].level > level) ++i;
    return Interval{from, i < steps_.size() ? steps_[i].from : unreachable};
  }
  return std::nullopt;
}

std::optional<Interval> Profile::last_above(int level, Time begin, Time end) const {
  if (begin >= end) return std::nullopt;
  for (std::size_t i = covering(end - 1); i > 0; --i) {
    const Time until = i < steps_.size() ? steps_[i].from : unreachable;
    if (until <= begin) break;
    if (steps_[i - 1].level <= level) continue;
    std::size_t first = i - 1;
    while (first > 0 && steps_[first - 1].level > level) --first;
    return Interval{steps_[first].from, until};
  }
  return std::nullopt;
}

}  // namespace coatday::solver
