#include "planner/result/condensation.h"

#include <fmt/core.h>

#include <algorithm>

namespace coatday::planner {

void write_condensation(job::Plan& plan) {
  Instant end = plan.from;
  for (const job::Event& event : plan.events) end = std::max(end, event.end);
  climate::RoomWork work;
  for (std::size_t r = 0; r < plan.air.rows().size(); ++r) {
    const Instant from = plan.air.rows()[r].from;
    if (from >= plan.from && from < end) work += plan.air.work(r).value_or(climate::RoomWork{});
  }
  if (work.condensing <= Hours(0)) return;
  plan.findings.push_back({"condensation",
                           job::Severity::warning,
                           fmt::format("for {} until {} the air is damper than it can hold: about {} of water condense in the shop",
                                       format_span(work.condensing), day_and_time(plan.shop.zone.to_local(end)),
                                       format_volume(Litres(work.condensed.value()), plan.shop.units)),
                           plan.shop.name,
                           {}});
}

}  // namespace coatday::planner
