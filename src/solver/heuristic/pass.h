#pragma once
// One pass of serial schedule generation with unscheduling. Activities are placed one by one, each at its earliest. Where that breaks a lag
// or finds no room, what is in the way is taken out (Repair) and comes back later.

#include "solver/heuristic/budget.h"
#include "solver/heuristic/failure_counts.h"
#include "solver/heuristic/pass_queue.h"
#include "solver/heuristic/repair.h"

namespace coatday::solver {

struct PassResult {
  std::optional<Schedule> schedule;
  int stuck = -1;  ///< where there is none: the activity it was given up at
};

class Pass {
 public:
  Pass(const Network&, const Bounds&, const PassSettings&, const Budget&, FailureCounts&);
  PassResult run();

 private:
  using Lifted = std::vector<std::pair<int, PartialSchedule::Reserved>>;

  bool yields(PassQueue::Waiting);
  bool attempt(int activity);
  bool use_remedies(int activity, const std::vector<int>& windows);
  Proposal propose(int activity, Time from);
  Proposal propose(int activity, bool shared, Time from);
  std::optional<Proposal> propose_kept(int activity, Time from);
  void examine(Proposal&);
  Lifted lift_holds(int activity);
  void put_back(const Lifted&);
  bool commit(const Candidate&, const Lifted&);
  bool confirm_holds();
  [[nodiscard]] Schedule result() const;

  const Network& network_;
  const PassSettings& settings_;
  const Budget& budget_;
  PassState state_;
  PartialSchedule& partial_;
  const EarliestFit& fit_;
  PassQueue queue_;
  Repair repair_;
};

}  // namespace coatday::solver
