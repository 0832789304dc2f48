#pragma once
// How often places can be taken one after another. A hold that begins in working hours and lasts over a night blocks its place for longer
// than it lasts, as nothing begins there before the morning.

#include <vector>

#include "solver/lower_bounds/holding.h"

namespace coatday::solver {

class Rounds {
 public:
  /// The bounds must be propagated and not crossed.
  Rounds(const Network&, const Bounds&, bool thorough);
  /// Whether there are more holds than rounds within these bounds.
  [[nodiscard]] bool too_many(const Bounds&) const;

 private:
  struct Kept {
    int activity = 0;  ///< the activity that begins it
    Time length = 0;   ///< at least
    int amount = 0;
    int hold = 0;
  };
  /// Holds of one pool, and instants. A hold that begins after one instant and not after the next (or not after the first) lasts beyond the
  /// next. So every hold that begins by the last instant is held at one of the instants.
  struct Series {
    int capacity = 0;
    std::vector<Kept> kept;
    std::vector<Time> instants;
    bool complete = false;  ///< no hold can begin after the last instant
  };
  void add_series(const Bounds&, const Pool&, std::vector<Kept>);
  void find_instants(const Bounds&, Series&) const;
  [[nodiscard]] static bool too_many(const Bounds&, const Series&);

  const Network& network_;
  std::vector<Series> series_;
};

}  // namespace coatday::solver
