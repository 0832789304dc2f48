#include "planner/result/waits.h"

#include <algorithm>

#include "job/air_forecast.h"

namespace coatday::planner {
namespace {

LocalDay monday_of(LocalDay day) { return day - (date::weekday(day) - date::Monday); }

/// The coat that comes next after a day without one; nothing on a day with a coat, and after the last coat.
std::optional<std::size_t> next_coat(const job::Plan& plan, Instant opening, LocalDay day) {
  std::optional<std::size_t> next;
  for (std::size_t i = 0; i < plan.events.size(); ++i) {
    const job::Event& event = plan.events[i];
    if (!job::is_coat(event.kind)) continue;
    if (day_of(plan.shop.zone.to_local(event.start)) == day) return std::nullopt;
    if (!next && event.start > opening) next = i;
  }
  return next;
}

/// Asks the air of that day whether the coat that comes next could go on.
job::Wait wait_for(const job::Job& job, const job::Plan& plan, std::size_t coat, Instant opening, LocalDay day) {
  const job::Event& event = plan.events[coat];
  const job::AirForecast air = job::forecast(job, job.catalogue, {job::Use{event.product, {}, {}}}, opening, 1);
  const job::FinishHours& finish = air.finishes.front();
  for (std::size_t row = air.days.front().first; row < air.days.front().last; ++row) {
    if (finish.may[row] && air.working[row]) return {day, coat, event.why, true, ""};
  }
  return {day, coat, event.why, false, finish.limit_exceeded};
}

}  // namespace

std::vector<job::Wait> waits_in(const job::Job& job, const job::Plan& plan) {
  std::vector<job::Wait> waits;
  for (const shop::WorkingTime& shift : plan.working) {
    const LocalDay day = day_of(plan.shop.zone.to_local(shift.begin));
    const std::optional<std::size_t> next = next_coat(plan, shift.begin, day);
    if (!next || plan.events[*next].why.empty()) continue;
    if (!waits.empty() && waits.back().step == *next && monday_of(waits.back().day) == monday_of(day)) continue;
    waits.push_back(wait_for(job, plan, *next, shift.begin, day));
  }
  return waits;
}

}  // namespace coatday::planner
