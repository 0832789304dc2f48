#pragma once
// How often places can be taken one after another: a hold that begins within working hours and lasts over a night ties its place up for longer
// than it lasts, since nothing begins there before the morning.

#include <vector>

#include "solver/lower_bounds/holding.h"

namespace coatday::solver {

class Rounds {
 public:
  /// The bounds are to be propagated and not crossed.
  Rounds(const Network&, const Bounds&, bool thorough);
  /// Whether within these bounds more is to be held than there are rounds for.
  [[nodiscard]] bool too_many(const Bounds&) const;

 private:
  struct Kept {
    int activity = 0;  ///< that begins it
    Time length = 0;   ///< at least
    int amount = 0;
    int hold = 0;
  };
  /// Holds of one pool. Whichever of them begins after the one instant (or before the first) and not after the next lasts beyond that: so
  /// all of them that begin until then hold at one of the instants.
  struct Series {
    int capacity = 0;
    std::vector<Kept> kept;
    std::vector<Time> instants;
    bool complete = false;  ///< no start is left after the last instant
  };
  void add_series(const Bounds&, const Pool&, std::vector<Kept>);
  void find_instants(const Bounds&, Series&) const;
  [[nodiscard]] static bool too_many(const Bounds&, const Series&);

  const Network& network_;
  std::vector<Series> series_;
};

}  // namespace coatday::solver
