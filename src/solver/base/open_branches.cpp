#include "solver/base/open_branches.h"

namespace coatday::solver {

bool OpenBranches::gone(int a) const {
  const int alternative = network_->alternative[at(a)];
  if (alternative < 0) return false;
  for (int b = network_->first_branch[at(alternative)]; b < network_->first_branch[at(alternative) + 1]; ++b) {
    if (open(b) && stands_in(a, network_->branches[at(b)])) return false;
  }
  return true;
}

OpenBranches::Closing OpenBranches::close(int a, int event) {
  const int alternative = network_->alternative[at(a)];
  Closing result;
  for (int b = network_->first_branch[at(alternative)]; b < network_->first_branch[at(alternative) + 1]; ++b) {
    if (open(b) && stands_in(a, network_->branches[at(b)])) {
      closed_[at(b)] = event;
      result.news = true;
    }
    result.any_open = result.any_open || open(b);
  }
  return result;
}

}  // namespace coatday::solver
