#pragma once
// Where holds lie on resources that are laid out in segments. In time and along the resource, holds are rectangles that may not overlap.

#include <optional>
#include <vector>

#include "solver/base/index.h"
#include "solver/base/problem.h"

namespace coatday::solver {

class Layout {
 public:
  explicit Layout(const Problem&);

  /// Whether the resource is laid out in segments.
  [[nodiscard]] bool covers(int resource) const { return of(resource).segment > 0; }
  /// A stretch for the demand that is free during the whole interval. Takes the tightest gap, so that wide gaps stay free.
  [[nodiscard]] std::optional<Stretch> room(const Demand&, const Interval&) const;
  /// The first end, after the interval begins, of a hold that lies there during it; `unreachable` where no hold does.
  [[nodiscard]] Time next_end(int resource, const Interval&) const;

  /// The stretch must be free. A hold that lasts no time is not laid.
  void lay(int resource, int hold, const Interval&, const Stretch&);
  void lift(int resource, int hold, const Interval&);

 private:
  struct Laid {
    Interval time;
    int hold = 0;
    Stretch stretch;
  };
  struct Line {
    int capacity = 0, segment = 0;
    std::vector<Laid> laid;  ///< sorted by begin
    Time longest = 0;        ///< the longest time for which anything lay here
  };
  [[nodiscard]] const Line& of(int resource) const { return lines_[at(resource)]; }
  template <typename Each>
  static void each_within(const Line&, const Interval&, const Each&);
  [[nodiscard]] static std::optional<Stretch> whole_segments(const Line&, int count, const std::vector<Interval>& taken);
  [[nodiscard]] static std::optional<Stretch> tightest(const Line&, int amount, const std::vector<Interval>& taken);

  std::vector<Line> lines_;              ///< by resource
  mutable std::vector<Interval> taken_;  ///< work space of room(), kept to avoid allocations
};

/// The time of a hold, from the start of its first activity to the earliest of `until` and the limit. The first activity must take part.
[[nodiscard]] Interval held(const Hold&, const Schedule&);

/// Stretches for the holds of a schedule, given out in the order in which the holds begin. Returns nothing if a hold finds no room.
[[nodiscard]] std::optional<std::vector<Stretch>> lay_out(const Problem&, const Schedule&);

}  // namespace coatday::solver
