#pragma once
// One pass of serial schedule generation with unscheduling. Places activities one by one, each at its earliest. Where an activity breaks a
// lag or finds no room, Repair takes out what is in its way, and that comes back later.

#include "solver/heuristic/budget.h"
#include "solver/heuristic/failure_counts.h"
#include "solver/heuristic/pass_queue.h"
#include "solver/heuristic/repair.h"

namespace coatday::solver {

struct PassResult {
  std::optional<Schedule> schedule;
  int stuck = -1;  ///< without a schedule: the activity at which the pass was given up
};

class Pass {
 public:
  Pass(PassState&, const Budget&, FailureCounts&);
  /// From nothing to a schedule.
  PassResult run();
  /// In a state with a schedule: takes these out, and what was placed because of them, and places them again. False: it was given up, and the
  /// state is no schedule any more.
  bool again(const std::vector<int>& activities);

 private:
  using Lifted = std::vector<std::pair<int, PartialSchedule::Reserved>>;

  bool yields(PassQueue::Waiting);
  bool place_all();
  bool attempt(int activity);
  bool use_remedies(int activity, const std::vector<int>& windows);
  Proposal propose(int activity, Time from);
  Proposal propose(int activity, bool shared, Time from);
  std::optional<Proposal> propose_wanted(int activity, Time from);
  std::optional<Proposal> propose_sound(int activity, bool shared, Time from);
  void examine(Proposal&);
  Lifted lift_holds(int activity);
  void put_back(const Lifted&);
  /// A hold that has no choice left, and from when on it may have one.
  struct Misfit {
    int hold;
    Time from;
  };
  std::optional<Misfit> commit(const Candidate&, const Lifted&);
  std::optional<Misfit> reserve_holds(const Candidate&, const Lifted&, std::vector<int>& reserved, Time& freed);
  bool confirm_holds();
  bool confirm_hold(int hold);
  [[nodiscard]] Schedule result() const;

  const Network& network_;
  const PassSettings& settings_;
  const Budget& budget_;
  PassState& state_;
  PartialSchedule& partial_;
  const EarliestFit& fit_;
  PassQueue queue_;
  Repair repair_;
};

}  // namespace coatday::solver
