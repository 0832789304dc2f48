#pragma once
// Passes over a problem with forks: each over the problem that is left when some way of every fork is taken.

#include <map>

#include "solver/heuristic/improvement.h"

namespace coatday::solver {

/// The problem when the ways of its forks are decided: what is not taken is optional, and the remedy of nothing.
[[nodiscard]] Problem taking(Problem, const std::vector<int>& taken);
/// The ways that a sound schedule takes.
[[nodiscard]] std::vector<int> ways_taken(const Problem&, const Schedule&);

class Variants {
 public:
  Variants(const Network&, const Bounds&, Budget&, Incumbent&);
  /// As Improvement's.
  void find();
  void improve(int most = never);
  [[nodiscard]] const Troubles& troubles() const;

 private:
  using Taken = std::vector<int>;  ///< by fork, the way
  struct Variant {
    Variant(const Network&, const Taken&, const Bounds&, Budget&, Incumbent&);
    Problem problem;
    Network network;
    Bounds bounds;
    std::optional<Improvement> passes;  ///< none where the bounds cross
  };
  template <typename Ways, typename Work>
  void turns(bool with_one, int most, const Ways&, const Work&);
  [[nodiscard]] Taken first() const;  ///< the first open way of each
  [[nodiscard]] Taken last() const;
  [[nodiscard]] Taken best() const;
  [[nodiscard]] Taken varied(Taken);
  std::optional<Improvement>& of(const Taken&);

  const Network& network_;
  const Bounds& bounds_;
  Budget& budget_;
  Incumbent& incumbent_;
  Random random_;
  std::optional<Improvement> plain_;  ///< where there are no forks
  std::map<Taken, std::unique_ptr<Variant>> variants_;
  Troubles troubles_;  ///< where no variant is left to ask
};

}  // namespace coatday::solver
