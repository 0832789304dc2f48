#include "report/page/waits.h"

#include "report/words.h"

namespace coatday::report::page {
namespace {

// "; that day's air does not fit water-based clear: 49 °F within 1 day of the coat is below its limit of 50 °F"
std::string air_against(const job::Plan& plan, const job::Wait& wait) {
  if (wait.air_fits) return "";
  return "; that day's air does not fit " + product_name(plan, plan.events[wait.step].product) + (wait.air.empty() ? "" : ": " + wait.air);
}

}  // namespace

std::vector<std::string> waits_in(const job::Plan& plan, const Week& week) {
  std::vector<std::string> waits;
  for (const job::Wait& wait : plan.waits) {
    if (wait.day < week.monday || wait.day >= week.monday + date::days(7)) continue;
    const job::Event& next = plan.events[wait.step];
    waits.push_back(date_text(wait.day) + ": " + next.name + (next.whose.empty() ? "" : " on " + next.whose) + " waits until " +
                    instant_text(next.start, plan.shop.zone) + ": " + wait.reason + air_against(plan, wait));
  }
  return waits;
}

}  // namespace coatday::report::page
