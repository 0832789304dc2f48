#include "planner/result/set_aside.h"

#include <algorithm>
#include <map>
#include <numeric>

#include <fmt/core.h>

#include "job/stages.h"

namespace coatday::planner {

namespace {

using solver::Time;

int parts_of(const std::vector<shop::Laid>& rows) {
  return std::accumulate(rows.begin(), rows.end(), 0, [](int sum, const shop::Laid& row) { return sum + row.count; });
}

/// When the coat of a hold reaches a stage; past all plans where the air ends first.
Time reached(const PlaceHold& hold, finish::Stage stage, const TaskGraph& graph, const solver::Schedule& schedule, Clocks& clocks,
             const Grid& grid) {
  const Task& coat = graph.tasks[hold.coat];
  const Instant end = coat.done ? coat.done->end : grid.instant(schedule.activities[hold.coat].end);
  const auto at = clocks.ends(StageOf{stage}, coat, end, finish::Estimate::expected);
  return at ? grid.up(*at) : solver::unreachable;
}

/// How the number of parts that stand aside changes, from a time on.
using Changes = std::map<Time, int>;

void add(Changes& changes, Time from, Time until, int parts) {
  from = std::max(from, Time(0));
  if (from >= until) return;
  changes[from] += parts;
  changes[until] -= parts;
}

}  // namespace

std::vector<Time> packed_at(const TaskGraph& graph, const solver::Schedule& schedule, Clocks& clocks, const Grid& grid) {
  std::vector<Time> all;
  for (const PlaceHold& hold : graph.place_holds) {
    Time at = reached(hold, job::stackable(*graph.tasks[hold.coat].product), graph, schedule, clocks, grid);
    if (hold.until) at = std::min(at, schedule.activities[*hold.until].start);
    all.push_back(at);
  }
  return all;
}

std::optional<Crowd> crowd_aside(const shop::Shop& shop, const Loads& loads, const TaskGraph& graph, const solver::Schedule& schedule,
                                 const std::vector<PlaceAssignment>& assignments, const std::vector<Time>& packed, Clocks& clocks,
                                 const Grid& grid) {
  if (shop.set_aside.value_or(0) == 0) return std::nullopt;
  Changes changes;
  std::vector<bool> placed(graph.place_holds.size(), false);
  for (const PlaceAssignment& one : assignments) {
    const Load& load = loads.loads[graph.place_holds[one.place_hold].load];
    placed[one.place_hold] = true;
    for (std::size_t n = 0; n < one.numbers.size(); ++n)
      add(changes, one.left[n], packed[one.place_hold], parts_of(load.choices[one.choice].packing.places[n]));
  }
  for (std::size_t h = 0; h < placed.size(); ++h) {
    const PlaceHold& hold = graph.place_holds[h];
    const Task& coat = graph.tasks[hold.coat];
    if (placed[h] || !coat.done) continue;  // it left its place before the plan begins
    add(changes, reached(hold, job::handled(*coat.product), graph, schedule, clocks, grid), packed[h], loads.loads[hold.load].items);
  }
  const auto not_packed = [&](Time at) {
    int sum = 0;
    for (std::size_t h = 0; h < packed.size(); ++h) {
      const PlaceHold& hold = graph.place_holds[h];
      if (schedule.activities[hold.coat].start <= at && at < packed[h]) sum += loads.loads[hold.load].items;
    }
    return sum;
  };
  std::optional<Crowd> crowd;
  int parts = 0;
  for (const auto& [at, change] : changes) {
    if (parts > *shop.set_aside) crowd->until = at;
    parts += change;
    if (parts <= *shop.set_aside) continue;
    if (!crowd) crowd = Crowd{at, at, 0, not_packed(at)};
    crowd->parts = std::max(crowd->parts, parts);
    crowd->not_packed = std::min(crowd->not_packed, not_packed(at));
  }
  return crowd;
}

job::Finding set_aside_full(const Crowd& crowd, const shop::Shop& shop, const Grid& grid) {
  const auto when = [&](Time t) { return day_and_time(shop.zone.to_local(grid.instant(t))); };
  return {"set-aside-full",
          job::Severity::warning,
          fmt::format("between {} and {} up to {} parts stand aside while they dry; the shop has room for {}", when(crowd.from),
                      when(crowd.until), crowd.parts, *shop.set_aside),
          "set aside",
          {}};
}

}  // namespace coatday::planner
