#pragma once
// Unscheduling: where an activity finds no place, takes out what is in its way, or lets it start only later from then on.

#include "solver/heuristic/failure_counts.h"
#include "solver/heuristic/pass_queue.h"
#include "solver/heuristic/pass_state.h"

namespace coatday::solver {

class Repair {
 public:
  Repair(PassState& state, PassQueue& queue, FailureCounts& failure_counts)
      : network_(state.network),
        partial_(state.partial),
        state_(state),
        queue_(queue),
        failure_counts_(failure_counts),
        failures_(at(state.network.size), 0) {}

  /// Makes room for an activity after a proposal that is not sound. False: the pass must be given up.
  bool resolve(int activity, const Proposal&);
  /// Takes out an activity that cannot stay. Counts as a failure of the pass.
  void take_out(int activity);
  /// Takes an activity out, and with it everything that was placed because of it.
  void unschedule(int activity);
  /// Stops the remedies of all windows that end at the activity.
  void drop_remedies(int activity);

  [[nodiscard]] bool out_of_patience() const { return all_failures_ > state_.settings.patience_all; }
  /// The activity of the last failure, or -1.
  [[nodiscard]] int stuck() const { return stuck_; }

 private:
  void unshare(int family, Time end);
  void stop_remedy(int lag);
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

  const Network& network_;
  PartialSchedule& partial_;
  PassState& state_;
  PassQueue& queue_;
  FailureCounts& failure_counts_;
  std::vector<int> failures_;  ///< by activity
  int all_failures_ = 0;
  int stuck_ = -1;
};

}  // namespace coatday::solver
