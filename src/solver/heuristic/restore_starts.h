#pragma once
// Moves activities of a schedule back to their kept starts, one at a time. Everything else stays as it is.

#include "solver/base/bounds.h"
#include "solver/heuristic/earliest_fit.h"

namespace coatday::solver {

class RestoreStarts {
 public:
  /// The schedule must be sound and laid out. Nothing moves beyond the bounds.
  RestoreStarts(const Network&, const Bounds&, const Schedule&);
  /// Goes from the first activity to the last and back, until nothing moves any more.
  [[nodiscard]] Schedule run();

 private:
  bool sweep(const std::vector<int>& order);
  bool move(int activity);
  bool move(int activity, bool shared);
  [[nodiscard]] bool lags_hold(const Candidate&, const Assignment& was) const;
  bool take_places(int activity);
  [[nodiscard]] bool all_share(int family) const;

  const Network& network_;
  const Bounds& bounds_;
  Schedule schedule_;
  PartialSchedule partial_;
  Lookahead lookahead_;
  EarliestFit fit_;
};

}  // namespace coatday::solver
