#pragma once
// Which branches of a problem's alternatives can still be taken.

#include <vector>

#include "solver/base/network.h"

namespace coatday::solver {

class OpenBranches {
 public:
  explicit OpenBranches(const Network& network) : network_(&network), closed_(network.branches.size(), -1) {}

  /// By the branch's number in Network::branches.
  [[nodiscard]] bool open(int branch) const { return closed_[at(branch)] < 0; }
  /// The event that closed a branch.
  [[nodiscard]] int reason(int branch) const { return closed_[at(branch)]; }
  /// Whether the activity takes part in no open branch.
  [[nodiscard]] bool gone(int activity) const;

  struct Closing {
    bool news = false;      ///< a branch was open until now
    bool any_open = false;  ///< a branch of the alternative is still open
  };
  /// Closes all branches in which the activity takes part.
  Closing close(int activity, int event);

 private:
  const Network* network_;
  std::vector<int> closed_;  ///< by branch: the event that closed it, or -1
};

}  // namespace coatday::solver
