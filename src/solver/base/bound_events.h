#pragma once
// Why bounds are what they are. Each move of a bound is an event, and names the event that it follows from.

#include <vector>

#include "solver/base/problem.h"

namespace coatday::solver {

class BoundEvents {
 public:
  struct Event {  ///< a requirement applied to an earlier bound, then perhaps a calendar
    int source = -1;
    Tag requirement = -1;
    Tag calendar = -1;
    int also = -1;  ///< another event that it follows from
  };

  /// The number of the new event.
  int add(const Event& event) {
    events_.push_back(event);
    return static_cast<int>(events_.size()) - 1;
  }
  /// The event and all events that it follows from.
  [[nodiscard]] std::vector<Event> grounds(int event) const;

 private:
  std::vector<Event> events_;
};

}  // namespace coatday::solver
