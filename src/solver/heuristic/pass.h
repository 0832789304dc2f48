#pragma once
// The inside of construct(): placing in pass.cpp, taking out again in repair.cpp.

#include "solver/heuristic/construct.h"
#include "solver/heuristic/earliest_fit.h"

namespace coatday::solver {

class Pass {
 public:
  Pass(const Network&, const Bounds&, const PassSettings&, const Budget&, FailureCounts&);
  Constructed run();

 private:
  struct Proposal {
    std::optional<Candidate> candidate;
    std::vector<int> missed;     ///< maximum lags that it misses and that must be kept
    std::vector<int> windows;    ///< maximum lags that it misses and that have a remedy
    std::vector<int> overtaken;  ///< minimum lags out of it to placed activities that would start too early
    std::vector<int> outrun;     ///< maximum lags out of it to placed activities that would start too late
    bool late = false;           ///< it is past the activity's latest start
    NoRoom why;                  ///< where there is no candidate
    [[nodiscard]] bool sound() const { return candidate && missed.empty() && overtaken.empty() && outrun.empty() && !late; }
  };
  using Lifted = std::vector<std::pair<int, PartialSchedule::Reserved>>;
  struct Waiting {  ///< an activity whose predecessors are placed
    int activity = -1;
    Time soonest = 0;  ///< in a pass in time: it cannot start before
  };

  // pass.cpp
  void push(int activity);
  void push(const Waiting&);
  Waiting pop();
  bool yields(Waiting);
  void wake(Time);
  [[nodiscard]] bool begins_hold(int activity) const;
  bool attempt(int activity);
  bool use_remedies(int activity, const std::vector<int>& windows);
  Proposal propose(int activity, Time from);
  Proposal propose(int activity, bool shared, Time from);
  std::optional<Proposal> propose_kept(int activity, Time from);
  void examine(Proposal&);
  [[nodiscard]] Time lower_bound(int activity, bool shared) const;
  Lifted lift_holds(int activity);
  void put_back(const Lifted&);
  bool commit(const Candidate&, const Lifted&);
  bool confirm_holds();
  [[nodiscard]] Schedule result() const;

  // repair.cpp
  void unschedule(int activity);
  void unshare(int family);
  void stop_remedy(int lag);
  void drop_remedies(int activity);
  bool resolve(int activity, const Proposal&);
  bool keep_lags(int activity, const Proposal&, bool& stuck);
  bool keep_window(int lag, Time start);
  bool delay_follower(int lag, const Candidate&);
  bool keep_hold(int hold, int activity);
  bool make_way(int activity, int depth);
  bool make_way_at(const Candidate&);
  bool make_way_for_predecessor(int activity, int depth);
  bool evict(const Demand&, const Interval&, int protect, int after_turn);
  [[nodiscard]] std::optional<Interval> crowded(const Demand&, int spare, const Interval&) const;
  bool evict_excluded(const Candidate&);
  [[nodiscard]] int evictable(const Demand&, const Interval&, int protect, int after_turn) const;
  void note_blockers(int activity, const Proposal&);

  [[nodiscard]] bool fixed(int activity) const { return bounds_.earliest(activity) == bounds_.latest(activity); }
  [[nodiscard]] bool before(int a, int b) const;  ///< by key
  [[nodiscard]] bool before(const Waiting& a, const Waiting& b) const {
    if (!settings_.in_time) return before(a.activity, b.activity);
    const double one = a.soonest + settings_.pull * settings_.key[at(a.activity)];
    const double other = b.soonest + settings_.pull * settings_.key[at(b.activity)];
    return one != other ? one < other : before(a.activity, b.activity);
  }

  const Network& network_;
  const Bounds& bounds_;
  const PassSettings& settings_;
  const Budget& budget_;
  FailureCounts& failure_counts_;
  PartialSchedule partial_;
  Lookahead lookahead_;
  EarliestFit fit_;
  std::vector<Waiting> heap_;
  struct Seen {
    Time from = unreachable, soonest = -unreachable;
  };
  std::vector<Seen> seen_;         ///< by kind, in a pass in time: where one of it would have gone since anything was taken out
  std::vector<int> waiting_;       ///< by activity: predecessors that are not placed
  std::vector<char> remedy_used_;  ///< by maximum lag
  std::vector<int> firmness_;      ///< by maximum lag: what is left
  std::vector<int> failures_;      ///< by activity
  int all_failures_ = 0;
  int stuck_ = -1;
};

}  // namespace coatday::solver
