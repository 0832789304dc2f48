#pragma once
// One scale for time: every week of the page is as wide as the page, so that a day is as wide everywhere.

#include <vector>

#include "job/plan.h"

namespace coatday::report::page {

/// From a Monday's midnight to the next one's, in the shop's own time. A week in which the clock changes has 167 or 169 hours.
struct Week {
  LocalDay monday;
  Instant from, until;

  /// 0 at its beginning, 1 at its end.
  [[nodiscard]] double share(Instant t) const {
    return static_cast<double>((t - from).count()) / static_cast<double>((until - from).count());
  }
  [[nodiscard]] bool meets(Instant begin, Instant end) const { return begin < until && end > from; }
};

/// The weeks from the plan's start until everything may be delivered, promises included; what cures after that is said in words.
[[nodiscard]] std::vector<Week> weeks_of(const job::Plan&);

/// The days of the timeline, from the plan's first day; none without a plan.
[[nodiscard]] int days_shown(const job::Plan&);

/// Stretches in which nobody is at work: nights, and days on which the shop is closed. Breaks of up to two hours are work.
struct Closed {
  Instant from, until;
  bool whole_day = false;  ///< a day or more
};
[[nodiscard]] std::vector<Closed> closed_in(const job::Plan&, const Week&);

}  // namespace coatday::report::page
