#pragma once
// Why an activity of a finished schedule does not start sooner.

#include "solver/heuristic/earliest_fit.h"

namespace coatday::solver {

/// A rule that fails where an activity would start at another time.
struct Blocker {
  enum class Rule { hold, demand, exclusion, limit, set_up };
  Rule rule = Rule::demand;
  Tag tag = -1;                 ///< of the resource, the exclusion or the maximum lag; a set-up has none
  std::vector<int> activities;  ///< that are in the way; of several those that end before the activity starts, where any do
  Time from = 0, until = 0;     ///< they are in the way during [from, until). Of a limit: its activity has to start by `until`
};

/// What keeps a follower from starting by the limit that a sooner start would give it.
struct Follower {
  Time latest = 0;                ///< it has to start by then
  std::optional<Time> last_open;  ///< the last start until then that lags and calendars allow
  std::vector<Blocker> blockers;  ///< what fails then
};

/// Asks a finished schedule what would fail if one activity started at another time. All else stays where it is.
class Blockers {
 public:
  /// The schedule is sound and laid out.
  Blockers(const Problem&, const Schedule&);

  /// The earliest start that the lags from other activities allow.
  [[nodiscard]] Time released(int activity) const;
  /// The first start from t on that calendars allow without sharing; `unreachable` where there is none.
  [[nodiscard]] Time first_open(int activity, Time t) const;
  /// The last start until t that calendars allow; -unreachable where there is none.
  [[nodiscard]] Time last_open(int activity, Time t) const;
  /// The rules that fail at this open start; none where it could start then.
  [[nodiscard]] std::vector<Blocker> failing(int activity, Time start);
  /// The first open start from `from` on at which nothing fails, where nothing fails at `last`.
  [[nodiscard]] Time soonest(int activity, Time from, Time last);
  /// For a limit that fails at this open start.
  [[nodiscard]] Follower follower(int activity, Time start, const Blocker& limit);

 private:
  struct TakenOut {
    int activity = -1;
    Assignment run;
    std::vector<std::pair<int, PartialSchedule::Reserved>> holds;
  };
  struct User {  ///< what takes some of a resource: an activity, or a hold of one
    int activity = -1, hold = -1;
    Interval time;
  };
  [[nodiscard]] TakenOut take_out(int activity);
  void put_back(const TakenOut&);
  [[nodiscard]] std::vector<Candidate> candidates(int activity, Time start) const;
  [[nodiscard]] std::vector<Blocker> blockers_of(const Candidate&);
  void add_demands(const Candidate&, std::vector<Blocker>&);
  void add_holds(const Candidate&, std::vector<Blocker>&);
  void add_exclusions(const Candidate&, std::vector<Blocker>&) const;
  void add_limits(const Candidate&, std::vector<Blocker>&) const;
  void add_set_ups(const Candidate&, std::vector<Blocker>&);
  [[nodiscard]] std::vector<User> users(int resource, const Interval&, Time preferred) const;
  [[nodiscard]] std::vector<User> in_the_way(const Demand&, const Interval&);
  template <typename Fits>
  [[nodiscard]] std::vector<User> least(const std::vector<User>&, const Fits&);
  PartialSchedule::Reserved lift(const User&);
  void give_back(const User&, const PartialSchedule::Reserved&);

  Network network_;
  PartialSchedule partial_;
  Lookahead lookahead_;
  EarliestFit fit_;
  Time was_ = 0;  ///< the start of the activity that is asked for
};

}  // namespace coatday::solver
