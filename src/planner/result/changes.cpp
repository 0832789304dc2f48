#include "planner/result/changes.h"

namespace coatday::planner {

job::Changes changes_since(const job::Starts& earlier, const job::Plan& plan) {
  job::Starts by_item;
  for (const auto& [event, start] : earlier) by_item.emplace(job::by_first_item(event), start);
  job::Changes changes;
  std::size_t known = 0;
  for (std::size_t i = 0; i < plan.events.size(); ++i) {
    const job::Event& event = plan.events[i];
    const auto was = by_item.find(job::by_first_item(event.id));
    if (was != by_item.end()) ++known;
    if (event.done || event.fixed) continue;
    if (was == by_item.end()) {
      ++changes.added;
    } else if (was->second == event.start) {
      ++changes.stayed;
    } else {
      changes.moved.push_back({i, was->second});
    }
  }
  changes.unknown = by_item.size() - known;
  return changes;
}

}  // namespace coatday::planner
