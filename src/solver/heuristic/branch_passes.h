#pragma once
// Passes over a problem with alternatives. Each pass runs on the problem that is left when one branch of every alternative is chosen.

#include <map>

#include "solver/heuristic/improvement.h"

namespace coatday::solver {

/// The problem with the branches of its alternatives chosen. Activities of other branches become optional, as the remedy of nothing.
[[nodiscard]] Problem with_branches(Problem, const std::vector<int>& taken);
/// The branches that a sound schedule takes.
[[nodiscard]] std::vector<int> taken_branches(const Problem&, const Schedule&);

class BranchPasses {
 public:
  BranchPasses(const Network&, const Bounds&, Budget&, Incumbent&);
  /// As Improvement::find() and improve().
  void find();
  void improve(int most = unreachable);
  [[nodiscard]] const FailureCounts& failure_counts() const;

 private:
  using Taken = std::vector<int>;  ///< by alternative: the branch
  struct Reduced {
    Reduced(const Network&, const Taken&, const Bounds&, Budget&, Incumbent&);
    Problem problem;
    Network network;
    Bounds bounds;
    std::optional<Improvement> passes;  ///< empty if the bounds cross
  };
  template <typename Branches, typename Work>
  void turns(bool with_one, int most, const Branches&, const Work&);
  [[nodiscard]] Taken first() const;  ///< the first open branch of each alternative
  [[nodiscard]] Taken last() const;
  [[nodiscard]] Taken best() const;
  [[nodiscard]] Taken varied(Taken);
  std::optional<Improvement>& of(const Taken&);

  const Network& network_;
  const Bounds& bounds_;
  Budget& budget_;
  Incumbent& incumbent_;
  Random random_;
  std::optional<Improvement> plain_;  ///< if there are no alternatives
  std::map<Taken, std::unique_ptr<Reduced>> reduced_;
  FailureCounts failure_counts_;  ///< empty, for when no reduced problem is in memory
};

}  // namespace coatday::solver
