#pragma once
// What lies where on resources that are laid out in segments: in time and along the resource, rectangles that may not overlap.

#include <optional>
#include <vector>

#include "solver/base/index.h"
#include "solver/base/problem.h"

namespace coatday::solver {

class Layout {
 public:
  explicit Layout(const Problem&);

  /// Whether the resource is laid out at all.
  [[nodiscard]] bool covers(int resource) const { return of(resource).segment > 0; }
  /// Where so much finds room all the time long: in the tightest gap, so that wide ones stay free.
  [[nodiscard]] std::optional<Stretch> room(const Demand&, const Interval&) const;
  /// The first end, after the interval's begin, of what lies there within it; `unreachable` where nothing does.
  [[nodiscard]] Time next_end(int resource, const Interval&) const;

  /// The stretch must be free; what lasts no time is not laid.
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
    std::vector<Laid> laid;  ///< by begin
    Time longest = 0;        ///< that anything ever lay
  };
  [[nodiscard]] const Line& of(int resource) const { return lines_[at(resource)]; }
  template <typename Each>
  static void each_within(const Line&, const Interval&, const Each&);
  [[nodiscard]] static std::optional<Stretch> whole_segments(const Line&, int count, const std::vector<Interval>& taken);
  [[nodiscard]] static std::optional<Stretch> tightest(const Line&, int amount, const std::vector<Interval>& taken);

  std::vector<Line> lines_;              ///< by resource
  mutable std::vector<Interval> taken_;  ///< of the last look, to spare the memory
};

/// While the hold's activity takes part: from its start to the earliest of `until` and the limit.
[[nodiscard]] Interval held(const Hold&, const Schedule&);

/// Stretches for the holds of a schedule, each in turn as it begins; nothing where one finds no room.
[[nodiscard]] std::optional<std::vector<Stretch>> lay_out(const Problem&, const Schedule&);

}  // namespace coatday::solver
