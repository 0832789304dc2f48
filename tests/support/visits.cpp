#include "tests/support/visits.h"

#include <algorithm>
#include <map>

namespace coatday::test {
namespace {

using std::chrono::minutes;

enum class Doing { nothing, stays, shop_work, order_work };

std::map<Instant, Doing> minute_by_minute(const job::Plan& plan, const job::Job& job) {
  std::map<Instant, Doing> all;
  const auto mark = [&all](Instant from, Instant until, Doing what) {
    for (Instant t = from; t < until; t += minutes(1)) all[t] = std::max(all[t], what);
  };
  const Minutes tidying = std::min(Minutes(30), std::chrono::duration_cast<Minutes>(job.shop.light_dust_settles));
  for (const job::Event& event : plan.events) {
    if (event.done || event.delivers || event.kind == job::EventKind::bake) continue;
    mark(event.start, event.end, event.piece ? Doing::order_work : Doing::shop_work);
    if (event.dust == shop::Dust::light) mark(event.end, event.end + tidying, Doing::stays);
  }
  return all;
}

}  // namespace

std::size_t visits_by_the_minute(const job::Plan& plan, const job::Job& job) {
  const std::map<Instant, Doing> doing = minute_by_minute(plan, job);
  if (doing.empty()) return 0;
  std::size_t visits = 0;
  std::optional<LocalDay> today;
  int pause = 0;
  bool counted = false;
  for (const shop::WorkingTime& hours : shop::working_time(job.shop, doing.begin()->first, doing.rbegin()->first + minutes(1))) {
    for (Instant t = hours.begin; t < hours.end; t += minutes(1)) {
      const LocalDay day = day_of(job.shop.zone.to_local(t));
      if (today != day) pause = 16;
      today = day;
      const auto at = doing.find(t);
      const Doing now = at == doing.end() ? Doing::nothing : at->second;
      const bool there = now > Doing::stays || (now == Doing::stays && pause <= 15);
      pause = there ? 0 : pause + 1;
      if (pause > 15) counted = false;
      if (now != Doing::order_work || counted) continue;
      counted = true;
      ++visits;
    }
  }
  return visits;
}

}  // namespace coatday::test
