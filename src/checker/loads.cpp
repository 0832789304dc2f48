// What a load is called is what it holds: what is recorded of it is recorded of just these items.

#include <set>

#include <fmt/core.h>

#include "checker/checks.h"
#include "job/load_items.h"

namespace coatday::checker {

void check_loads(const PlanFacts& facts, Breaches& out) {
  std::set<std::tuple<std::size_t, std::string, int>> named;  // piece, part, item
  for (const auto& [key, load] : facts.loads) {
    const job::Event& event = facts.event(load.events.front());
    std::map<std::string, int> items;
    for (const job::ItemRange& range : job::items_of(event.step_id.load)) {
      items[range.part] += range.last - range.first + 1;
      for (int item = range.first; item <= range.last; ++item) {
        if (named.emplace(event.piece.value_or(0), range.part, item).second) continue;
        out.push_back({"load-items-differ", fmt::format("item {} of {} is in two loads, one of them {}", item, range.part, key)});
        break;
      }
    }
    for (const auto& [part, count] : load.items) {
      if (items[part->id] == count) continue;
      out.push_back({"load-items-differ", fmt::format("{} holds {} of {} and is called by {}", key, count, part->name, items[part->id])});
    }
  }
}

}  // namespace coatday::checker
