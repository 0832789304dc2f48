#include "report/figures/time_scale.h"

#include <algorithm>

#include "report/words.h"

namespace coatday::report::page {
namespace {

LocalDay monday_of(LocalDay day) { return day - (weekday(day) - weekday(1)); }

Instant last_moment(const job::Plan& plan) {
  Instant last = plan.from;
  for (const job::Event& event : plan.events) last = std::max(last, event.end);
  for (const job::PieceResult& piece : plan.pieces) {
    for (const auto& moment : {piece.due, piece.ready.expected.deliver, piece.ready.slow.deliver})
      last = std::max(last, moment.value_or(last));
  }
  return std::min(last, plan.until);
}

}  // namespace

std::vector<Week> weeks_of(const job::Plan& plan) {
  if (plan.events.empty()) return {};
  const Zone& zone = plan.shop.zone;
  const Instant first = std::min(plan.from, plan.events.front().start);
  const LocalDay last = local_day(last_moment(plan), zone);
  std::vector<Week> weeks;
  for (LocalDay monday = monday_of(local_day(first, zone)); monday <= last; monday += date::days(7)) {
    weeks.push_back({monday, zone.to_instant(LocalTime(monday)), zone.to_instant(LocalTime(monday + date::days(7)))});
  }
  return weeks;
}

int days_shown(const job::Plan& plan) {
  const std::vector<Week> weeks = weeks_of(plan);
  if (weeks.empty()) return 0;
  const Instant last = std::min(weeks.back().until, plan.until) - std::chrono::seconds(1);
  const auto days = (local_day(last, plan.shop.zone) - local_day(plan.from, plan.shop.zone)).count() + 1;
  return std::max(1, static_cast<int>(days));
}

std::vector<Closed> closed_in(const job::Plan& plan, const Week& week) {
  constexpr Hours shortest{2}, longest_night{23};
  std::vector<Closed> closed;
  Instant free = week.from;
  const auto add = [&](Instant until) {
    if (until - free > shortest) closed.push_back({free, until, Hours(until - free) > longest_night});
  };
  for (const shop::WorkingTime& shift : shop::working_time(plan.shop, week.from, week.until)) {
    add(shift.begin);
    free = shift.end;
  }
  add(week.until);
  return closed;
}

}  // namespace coatday::report::page
