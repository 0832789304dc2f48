#include "solver/base/bound_events.h"

#include "solver/base/index.h"

namespace coatday::solver {

std::vector<BoundEvents::Event> BoundEvents::grounds(int event) const {
  std::vector<Event> result;
  std::vector<char> seen(events_.size(), 0);
  for (std::vector<int> left{event}; !left.empty();) {
    int i = left.back();
    left.pop_back();
    for (; i >= 0 && seen[at(i)] == 0; i = events_[at(i)].source) {
      seen[at(i)] = 1;
      result.push_back(events_[at(i)]);
      if (events_[at(i)].also >= 0) left.push_back(events_[at(i)].also);
    }
  }
  return result;
}

}  // namespace coatday::solver
