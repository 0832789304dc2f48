#pragma once
// Which activity a pass places next. Of those with all predecessors placed, it is the one with the smallest key.

#include "solver/heuristic/pass_state.h"

namespace coatday::solver {

class PassQueue {
 public:
  struct Waiting {  ///< an activity with all predecessors placed
    int activity = -1;
    Time soonest = 0;  ///< in a pass in time: it cannot start before this
  };
  /// Of activities of one kind: none can start in [from, soonest).
  struct Seen {
    Time from = unreachable, soonest = -unreachable;
  };

  explicit PassQueue(const PassState& state) : state_(state), seen_(at(state.network.kinds)) {}

  [[nodiscard]] bool empty() const { return heap_.empty(); }
  [[nodiscard]] const Waiting& front() const { return heap_.front(); }
  /// Adds the activity if it can be placed now.
  void push(int activity);
  void push(const Waiting&);
  Waiting pop();
  /// Holds have ended earlier and their places are free from t on. Activities that begin holds may start sooner than it seemed.
  void wake(Time t);
  [[nodiscard]] bool before(const Waiting&, const Waiting&) const;
  /// In a pass in time, by kind: what was found out since anything was taken out.
  [[nodiscard]] Seen& seen(int activity) { return seen_[at(state_.network.kind[at(activity)])]; }
  void forget_seen() { seen_.assign(seen_.size(), {}); }

 private:
  [[nodiscard]] bool begins_hold(int activity) const;

  const PassState& state_;
  std::vector<Waiting> heap_;
  std::vector<Seen> seen_;
};

}  // namespace coatday::solver
