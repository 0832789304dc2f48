#pragma once
// The earliest place for one activity in a schedule in the making.

#include <optional>

#include "solver/base/partial_schedule.h"

namespace coatday::solver {

/// What the search knows of activities that are not placed yet.
struct Lookahead {
  std::vector<Time> release;  ///< no start before this
  bool generous = false;      ///< holds whose `until` is not placed are reserved up to their limit
};

/// Why there is no place at all.
struct NoRoom {
  int hold = -1;  ///< this hold, begun by a placed activity, cannot last so long; -1: nothing but time ran out
};

class EarliestFit {
 public:
  EarliestFit(const Network& network, const PartialSchedule& partial, const Lookahead& lookahead)
      : network_(network), partial_(partial), lookahead_(lookahead) {}

  /// The earliest start >= low that calendars, resources, exclusions and holds allow; lags are not looked at.
  [[nodiscard]] std::optional<Candidate> earliest(int activity, bool shared, Time low, NoRoom&) const;
  /// The same without resources, exclusions and holds.
  [[nodiscard]] std::optional<Candidate> earliest_by_calendar(int activity, bool shared, Time low) const;

  /// The time for which a hold is to be reserved, where its `first` and perhaps others are placed or are the candidate. What is not placed
  /// yet is taken at its earliest.
  [[nodiscard]] Interval held(const Hold&, const Candidate&) const;
  /// The choice that fits and stays free the longest, or -1.
  [[nodiscard]] int choose(const Hold&, const Interval&) const;
  [[nodiscard]] bool fits(const Demand&, const Interval&) const;
  /// Whether a resource that is laid out has a stretch free for it, all the time long.
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
