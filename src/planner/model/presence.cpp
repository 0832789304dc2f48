#include "planner/model/presence.h"

#include <algorithm>

namespace coatday::planner {

namespace {

using solver::Time;

/// Where a day falls into halves: where its longest break begins, or at noon.
Minutes middle_of(const shop::Shop& shop, weekday day) {
  std::vector<shop::Shift> shifts;
  std::copy_if(shop.week.begin(), shop.week.end(), std::back_inserter(shifts), [day](const shop::Shift& one) { return one.day == day; });
  std::sort(shifts.begin(), shifts.end(), [](const shop::Shift& a, const shop::Shift& b) { return a.from < b.from; });
  Minutes middle{12 * 60}, longest{0};
  for (std::size_t i = 1; i < shifts.size(); ++i) {
    const Minutes pause = shifts[i].from - shifts[i - 1].until;
    if (pause <= longest) continue;
    longest = pause;
    middle = shifts[i - 1].until;
  }
  return middle;
}

solver::Hands hands_of(const Task& task, const shop::Shop& shop) {
  solver::Hands hands;
  hands.soon = task.product != nullptr && !task.done;
  hands.before_next = task.kind == job::EventKind::turn;
  hands.on = !task.milestone && !task.done && !task.delivers && task.kind != job::EventKind::bake;
  hands.counts = task.piece.has_value();
  if (task.dust == shop::Dust::light) hands.trails = Grid::steps(std::min(shop.light_dust_settles, Hours(most_tidying)));
  return hands;
}

}  // namespace

solver::Presence presence_of(const shop::Shop& shop, const TaskGraph& graph, const Calendar& calendar, const Grid& grid) {
  solver::Presence presence;
  presence.open = calendar.working();
  presence.gap = Grid::steps_within(Hours(visit_gap));
  presence.shortest = Grid::steps(Hours(visit_gap));
  const Instant last = grid.instant(calendar.horizon());
  for (LocalDay day = day_of(shop.zone.to_local(grid.instant(0)));; day += date::days(1)) {
    const Instant begin = shop.zone.to_instant(day + Minutes(0));
    if (begin > last) break;
    const Instant middle = shop.zone.to_instant(day + middle_of(shop, weekday(day)));
    presence.days.push_back(grid.up(begin));
    presence.halves.push_back(grid.up(begin));
    presence.halves.push_back(grid.up(middle));
  }
  for (const Task& task : graph.tasks) presence.hands.push_back(hands_of(task, shop));
  return presence;
}

}  // namespace coatday::planner
