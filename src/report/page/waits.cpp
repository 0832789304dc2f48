#include "report/page/waits.h"

#include <algorithm>

#include "report/words.h"

namespace coatday::report::page {
namespace {

/// Whether a finish may go on at some working half hour of the day.
bool fits_on(const job::AirForecast& air, const std::string& product, LocalDay day, const Zone& zone) {
  const auto finish =
      std::find_if(air.finishes.begin(), air.finishes.end(), [&](const job::FinishHours& f) { return f.use.product == product; });
  if (finish == air.finishes.end()) return true;
  const auto rows = air.air.rows();
  for (std::size_t i = 0; i < finish->may.size() && i < rows.size(); ++i) {
    if (finish->may[i] && air.working[i] && local_day(rows[i].from, zone) == day) return true;
  }
  return false;
}

// "; that day's air does not fit water-based clear: 49 °F within 1 day of the coat is below its limit of 50 °F"
std::string air_against(const job::Job& job, const Chart& chart, const std::string& product, Instant opening) {
  const LocalDay day = local_day(opening, chart.plan.shop.zone);
  if (fits_on(chart.air, product, day, chart.plan.shop.zone)) return "";
  const job::AirForecast alone = job::forecast(job, job.catalogue, {job::Use{product, {}, {}}}, opening, 1);
  const std::string reason = alone.finishes.empty() ? "" : alone.finishes.front().hindrance;
  return "; that day's air does not fit " + product_name(chart.plan, product) + (reason.empty() ? "" : ": " + reason);
}

}  // namespace

std::vector<std::string> waits_in(const job::Job& job, const Chart& chart, const Week& week) {
  const job::Plan& plan = chart.plan;
  std::vector<std::string> waits;
  const job::Event* told = nullptr;
  for (const shop::WorkingTime& shift : shop::working_time(plan.shop, std::max(week.from, plan.from), week.until)) {
    const LocalDay day = local_day(shift.begin, plan.shop.zone);
    const auto on_day = [&](const job::Event& e) { return job::is_coat(e.kind) && local_day(e.start, plan.shop.zone) == day; };
    if (std::any_of(plan.events.begin(), plan.events.end(), on_day)) continue;
    const auto next = std::find_if(plan.events.begin(), plan.events.end(),
                                   [&](const job::Event& e) { return job::is_coat(e.kind) && e.start > shift.begin; });
    if (next == plan.events.end() || &*next == told || next->why.empty()) continue;
    told = &*next;
    waits.push_back(date_text(day) + ": " + next->name + (next->whose.empty() ? "" : " on " + next->whose) + " waits until " +
                    instant_text(next->start, plan.shop.zone) + ": " + next->why + air_against(job, chart, next->product, shift.begin));
  }
  return waits;
}

}  // namespace coatday::report::page
