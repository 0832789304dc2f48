#include "shop/shop.h"

#include <algorithm>

namespace coatday::shop {
namespace {

/// The day's shifts as instants, whatever the clocks do that day. A shift inside the hour that summer time skips has no length.
std::vector<WorkingTime> shifts_of(const Shop& shop, LocalDay day) {
  std::vector<WorkingTime> all;
  for (const Shift& shift : shop.week)
    if (shift.day == weekday(day)) all.push_back({shop.zone.to_instant(day + shift.from), shop.zone.to_instant(day + shift.until)});
  std::sort(all.begin(), all.end(), [](const WorkingTime& a, const WorkingTime& b) { return a.begin < b.begin; });
  return all;
}

void append(std::vector<WorkingTime>& joined, WorkingTime next) {
  if (next.begin >= next.end) return;
  if (!joined.empty() && next.begin <= joined.back().end) {
    joined.back().end = std::max(joined.back().end, next.end);
  } else {
    joined.push_back(next);
  }
}

bool usable(const StockItem& item, LocalDay on, std::optional<Hours> keeps_opened) {
  if (item.good_until && on > *item.good_until) return false;
  return !item.opened || !keeps_opened || on - *item.opened <= *keeps_opened;
}

}  // namespace

std::vector<WorkingTime> working_time(const Shop& shop, Instant from, Instant until) {
  std::vector<WorkingTime> joined;
  std::vector<LocalDay> closed = shop.closed;
  std::sort(closed.begin(), closed.end());
  const LocalDay last = day_of(shop.zone.to_local(until));
  for (LocalDay day = day_of(shop.zone.to_local(from)); day <= last; day += date::days(1)) {
    if (std::binary_search(closed.begin(), closed.end(), day)) continue;
    for (const WorkingTime& shift : shifts_of(shop, day)) append(joined, {std::max(shift.begin, from), std::min(shift.end, until)});
  }
  return joined;
}

std::vector<WorkingTime> cut_by_day(const Zone& zone, const std::vector<WorkingTime>& all) {
  std::vector<WorkingTime> cut;
  for (WorkingTime left : all) {
    while (left.begin < left.end) {
      const Instant midnight = zone.to_instant(day_of(zone.to_local(left.begin)) + date::days(1) + Minutes(0));
      cut.push_back({left.begin, std::min(left.end, midnight)});
      left.begin = cut.back().end;
    }
  }
  return cut;
}

Instant worked_until(const Shop& shop, Instant start, std::chrono::seconds work, Instant latest) {
  std::chrono::seconds left = work;
  for (const WorkingTime& stretch : working_time(shop, start, latest)) {
    if (stretch.end - stretch.begin >= left) return stretch.begin + left;
    left -= stretch.end - stretch.begin;
  }
  return latest;
}

Litres usable_stock(const Shop& shop, const std::string& product, LocalDay on, std::optional<Hours> keeps_opened) {
  Litres sum;
  for (const StockItem& item : shop.stock)
    if (item.product == product && usable(item, on, keeps_opened)) sum += item.volume;
  return sum;
}

}  // namespace coatday::shop
