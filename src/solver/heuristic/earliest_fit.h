#pragma once
// The earliest place for one activity in a schedule in the making.

#include <optional>

#include "solver/base/partial_schedule.h"

namespace coatday::solver {

/// What a pass knows about activities that are not placed yet.
struct Lookahead {
  std::vector<Time> release;  ///< by activity: no start before this
  std::vector<Time> wanted;   ///< by activity: it will rather start then; `unreachable`: nobody knows. Empty: of no activity
  bool generous = false;      ///< reserve holds up to their limit while no `until` is placed
};

/// Why an activity has no place at all.
struct NoRoom {
  int hold = -1;  ///< a hold of a placed activity that cannot last so long; -1: the horizon is too near
};

class EarliestFit {
 public:
  EarliestFit(const Network& network, const PartialSchedule& partial, const Lookahead& lookahead)
      : network_(network), partial_(partial), lookahead_(lookahead) {}

  /// The earliest start >= low that calendars, resources, exclusions and holds allow. Ignores lags.
  [[nodiscard]] std::optional<Candidate> earliest(int activity, bool shared, Time low, NoRoom&) const;
  /// The same by calendars alone.
  [[nodiscard]] std::optional<Candidate> earliest_by_calendar(int activity, bool shared, Time low) const;

  /// The time to reserve for a hold with a `first` that is placed or is the candidate. Activities that are not placed count at their
  /// earliest.
  [[nodiscard]] Interval held(const Hold&, const Candidate&) const;
  /// The choice that fits and then stays free longest, or -1.
  [[nodiscard]] int choose(const Hold&, const Interval&) const;
  [[nodiscard]] bool fits(const Demand&, const Interval&) const;
  /// Whether a laid out resource has a stretch that is free for the whole interval. True for other resources.
  [[nodiscard]] bool has_room(const Demand&, const Interval&) const;

 private:
  [[nodiscard]] Time clear_of_resources(const Candidate&) const;
  [[nodiscard]] Time clear_of_exclusions(const Candidate&) const;
  [[nodiscard]] Time clear_of_holds(const Candidate&, NoRoom&) const;
  [[nodiscard]] Time clear_of(const Demand&, const Interval&) const;
  [[nodiscard]] Time next_sharing(int activity, Time) const;
  [[nodiscard]] Time estimate(int activity, const Candidate&) const;
  [[nodiscard]] int capacity(int resource) const { return network_.problem.resources[at(resource)].capacity; }

  const Network& network_;
  const PartialSchedule& partial_;
  const Lookahead& lookahead_;
};

}  // namespace coatday::solver
