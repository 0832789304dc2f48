#include "planner/result/changes.h"

namespace coatday::planner {

job::Changes changes_since(const job::Starts& earlier, const job::Plan& plan) {
  job::Changes changes;
  std::size_t known = 0;
  for (std::size_t i = 0; i < plan.events.size(); ++i) {
    const job::Event& event = plan.events[i];
    const auto was = earlier.find(event.id);
    if (was != earlier.end()) ++known;
    if (event.done || event.fixed) continue;
    if (was == earlier.end()) {
      ++changes.added;
    } else if (was->second == event.start) {
      ++changes.stayed;
    } else {
      changes.moved.push_back({i, was->second});
    }
  }
  changes.unknown = earlier.size() - known;
  return changes;
}

}  // namespace coatday::planner
