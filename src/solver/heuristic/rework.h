#pragma once
// Changes a sound schedule here and there, on trial. What a change costs does not depend on the size of the rest.

#include "solver/heuristic/pass.h"

namespace coatday::solver {

struct Wish {
  int activity = 0;
  Time start = 0;
  std::optional<double> key{};  ///< of those that are put back, the smallest key goes first; none: as its manner says
};

/// How a change goes about it.
struct Manner {
  bool first = true;  ///< the wishes come before all else; otherwise each in its turn
  bool firm = true;   ///< windows are kept rather than missed
};

class Rework {
 public:
  /// The schedule must be sound, laid out, and within the bounds. The problem must have no alternatives.
  Rework(const Network&, const Bounds&, const Schedule&, const Budget&);

  /// Starts each activity when it is wished, or as soon after as it can. What is in the way moves, and stays as near as it can. The change
  /// is then on trial. False: there is no such schedule at hand, and nothing has changed.
  bool change(const std::vector<Wish>&, Manner);
  void accept();
  void undo();
  /// The activities that moved in the trial, and how each ran before.
  [[nodiscard]] const std::vector<std::pair<int, std::optional<Assignment>>>& before() const { return state_.partial.before(); }

  [[nodiscard]] const Assignment& run(int activity) const { return state_.partial.run(activity); }
  [[nodiscard]] bool placed(int activity) const { return state_.partial.placed(activity); }
  [[nodiscard]] Schedule schedule() const;

 private:
  void load(const Schedule&);
  void want_as_placed(int activity);

  const Network& network_;
  const Bounds& bounds_;
  const Budget& budget_;
  PassSettings settings_;
  FailureCounts failure_counts_;
  PassState state_;
  std::vector<char> remedy_used_;  // before the trial
  std::vector<Time> release_;
};

}  // namespace coatday::solver
